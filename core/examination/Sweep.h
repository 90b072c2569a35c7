// An edge that hands follow, unrolled into steps of about 25 mm in a patient of this height, each marked as it is felt; and the
// findings that the marks make. Plain values; nothing fails.
#pragma once

#include "core/anatomy/Edge.h"
#include "core/record/Visit.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

struct SweepStep {
    Millimetres from; // along the edge, from its first end
    Millimetres to;
    std::vector<std::size_t> stretches; // of the edge, that attach within it
};

struct Sweep {
    Place place; // of the edge
    Edge edge;
    Millimetres length;
    std::vector<SweepStep> steps;
    std::vector<StructureId> midline; // what attaches and exists in the midline only
    [[nodiscard]] bool isMidline(const StructureId &id) const
    {
        return std::find(midline.begin(), midline.end(), id) != midline.end();
    }
};

/// Nothing when the structure is no edge. Steps are of one length, the last one included.
[[nodiscard]] std::optional<Sweep> sweepOf(const Atlas &atlas, const Place &place, Millimetres stature);

/// One mark a step: tenderness 0 to 4, 0 is clear, nothing: not felt. What attaches to a sore step is tender there, as much as
/// the worst of its steps; what attaches to clear steps only, all of them felt, is clear of tenderness. A sore step to which
/// nothing attaches, and every one of an edge in the midline, is a finding of the edge itself; so is an edge that is all clear.
[[nodiscard]] std::vector<Finding> findingsOf(const Sweep &sweep, const std::vector<std::optional<int>> &marks);

/// 'tender at 75-125 mm from the anterior superior iliac spine'.
[[nodiscard]] std::string whereSore(const Sweep &sweep, const std::vector<std::optional<int>> &marks);

} // namespace raphe
