// What one version of a visit says differently from the one before, in words. Plain functions of plain values.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/examination/Examination.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <QStringList>

namespace raphe {

/// A finding with its place: "right piriformis: belly, tenderness 3, familiar pain".
[[nodiscard]] QString findingLine(const Atlas &atlas, const Finding &finding);

struct VisitChanges {
    QStringList added; // findings
    QStringList gone;
    QStringList changed; // at a place that has one in both
    QStringList others; // whatever else was written
    [[nodiscard]] bool areNone() const { return added.isEmpty() && gone.isEmpty() && changed.isEmpty() && others.isEmpty(); }
};

/// None when both are equal, and only then. `rules` name the conditions.
[[nodiscard]] VisitChanges visitChanges(
    const Atlas &atlas, const SafetyRules &rules, const Examination &examination, const Visit &before, const Visit &after);

} // namespace raphe
