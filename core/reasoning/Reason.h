// What the findings point to, and what to check next: ranked, each with its terms, its reason and its path.
// First form: both lists rank by the lift of the walk (Spread.h). Everything is computed in one canonical orientation
// and mirrored back, so that a mirrored visit gives exactly the mirrored answer.
#pragma once

#include "core/reasoning/Paths.h"
#include "core/record/Visit.h"

#include <string>
#include <vector>

namespace raphe {

struct Term {
    std::string name; // constant or quantity, e.g. "spread"
    double value = 0;
};

struct Suggestion {
    Place place;
    double score = 0; // for ordering and bars only; never a probability
    int rank = 0; // 1 is first; equal scores share a rank
    std::vector<Term> terms;
    std::string why;
    std::vector<PathStep> path; // from the nearest finding
};

struct Reasons {
    std::vector<Suggestion> explain; // places the findings point to; found ones included, clear ones never
    std::vector<Suggestion> check; // the same among places not yet examined
};

inline constexpr std::size_t suggestionsAtMost = 20;

/// How strongly a finding pulls; 0 for a clear or unable one.
[[nodiscard]] double strengthOf(const Finding &finding, const Constants &constants);

/// The visit or its mirror image, whichever comes first in a fixed order, with findings sorted.
struct Canonical {
    Visit visit;
    bool isMirrored = false;
};
[[nodiscard]] Canonical canonical(const Visit &visit);

/// Lift at every node of the linkage for these findings; of mirrored findings exactly the mirrored values. What is clear
/// at one spot or of one quality and found at another is found.
[[nodiscard]] std::vector<double> liftOf(
    const Linkage &linkage, const std::vector<Finding> &findings, const Constants &constants);

/// Sorts best first, keeps 20 at most, gives equal scores one rank.
void rankAndCut(std::vector<Suggestion> &list);
void mirrorAll(std::vector<Suggestion> &list);

[[nodiscard]] Reasons reason(const Linkage &linkage, const Visit &visit, const Constants &constants);

} // namespace raphe
