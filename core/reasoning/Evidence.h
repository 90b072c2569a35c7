// From a visit's findings to what the walk starts from, what absorbs, and what the posterior is asked about. No state.
#pragma once

#include "core/reasoning/Constants.h"
#include "core/reasoning/Linkage.h"
#include "core/reasoning/Posterior.h"
#include "core/record/Visit.h"

#include <set>
#include <string_view>

namespace raphe {

/// How strongly a finding pulls in the walk; 0 for a clear or unable one.
[[nodiscard]] double strengthOf(const Finding &finding, const Constants &constants);

/// The visit or its mirror image, whichever comes first in a fixed order, with findings and complaint sorted.
struct Canonical {
    Visit visit;
    bool isMirrored = false;
    bool isItsOwnImage = false;
};
[[nodiscard]] Canonical canonical(const Visit &visit);

/// Start of the walk, a value a node.
[[nodiscard]] std::vector<double> startOf(
    const Linkage &linkage, const std::vector<Finding> &findings, const Constants &constants);
/// Nodes at which something was found, in order.
[[nodiscard]] std::vector<std::size_t> foundNodes(const Linkage &linkage, const std::vector<Finding> &findings);
/// Nodes that are clear and at which nothing was found either: not at another spot, not of the other quality.
[[nodiscard]] std::set<std::size_t> clearNodes(const Linkage &linkage, const std::vector<Finding> &findings);
/// Nodes of all that was examined or could not be; of a whole, its parts too.
[[nodiscard]] std::set<std::size_t> examinedNodes(const Linkage &linkage, const std::vector<Finding> &findings);

/// An observation, and what it says in one word: tenderness, familiar, motion.
struct Evidence {
    std::string_view quality;
    Place place;
    Observation observation;
};

/// What findings say of a source, one entry for each place, quality and node; of several spots at a place the strongest.
/// Tenderness and 'familiar' count; motion only where the examiner is certain, and then little (its repeatability is poor:
/// Stochkendahl 2006, abstract). A midline finding of a segment counts half for each side.
[[nodiscard]] std::vector<Evidence> evidenceOf(
    const Linkage &linkage, const std::vector<Finding> &findings, const Constants &constants);

/// The constant `prefix` + how often the structure is the place of trouble; 1 where that is often, or nobody has said.
[[nodiscard]] double howOftenFactor(const Structure &structure, std::string_view prefix, const Constants &constants);

/// What a check by touch tells: tender or not, at the grade of a plain finding. What hands seldom feel for by itself tells less.
[[nodiscard]] Detection touch(const Structure &structure, const Constants &constants);

} // namespace raphe
