// One technique for a place that is to be treated, chosen before the plan is made. No state; thread-safe.
#pragma once

#include "core/plan/Technique.h"
#include "core/reasoning/Suggestion.h"
#include "core/record/Visit.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace raphe {

/// Work at a place in the days before this visit.
struct EarlierWork {
    Place place;
    std::string technique; // id
    int daysAgo = 0; // 0: today
    auto operator<=>(const EarlierWork &) const = default;
};

/// What narrows the choice besides the cautions.
struct TechniqueLimits {
    std::optional<std::set<std::string>> actions; // within the scope of practice; nothing: not restricted
    std::set<std::string> without; // techniques that are not wanted today, by id or by action
    std::vector<EarlierWork> earlier;
};

struct TechniqueChoice {
    const Technique *technique = nullptr; // nullptr: nothing suits that may be done
    std::string why; // why this one, or why none; a sentence
    std::vector<CautionVerdict> cautions; // that concern it
};

/// What a place of the atlas is treated as, by the spot where it was found most; nothing for what hands do not treat.
[[nodiscard]] std::optional<Tissue> tissueOf(const Structure &structure, const std::vector<Finding> &findings);

/// Those of the techniques that are meant for what the place is treated as, whatever was felt.
[[nodiscard]] std::vector<const Technique *> techniquesFor(
    const Techniques &techniques, const Structure &structure, const std::vector<Finding> &findings);

/// The technique that suits best what was found there (`findings`: those of this place), or `wanted`, when it may be done: within
/// the scope, not stopped, not worked too lately or too often, and, for a thrust, with the patient's yes to it. One that is to be
/// adapted counts two weights less.
[[nodiscard]] TechniqueChoice chooseTechnique(const Techniques &techniques, const Structure &structure,
    const Suggestion &suggestion, const std::vector<Finding> &findings, const TechniqueLimits &limits,
    const std::optional<std::string> &wanted = {});

} // namespace raphe
