// The rows of the three lists, from the tables.
#include "core/reasoning/ReasonTables.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace raphe {

namespace {

using Eigen::Index;
using Eigen::VectorXd;
using Nodes = std::vector<std::size_t>;

constexpr double least = 1e-12; // what the walk does not reach at all is not a suggestion

} // namespace

// The best of many: a row is made only of what is shown.
std::vector<Suggestion> ReasonTables::best(std::vector<std::pair<double, std::size_t>> scored) const
{
    const auto kept = scored.begin() + static_cast<std::ptrdiff_t>(std::min(scored.size(), suggestionsAtMost));
    std::partial_sort(scored.begin(), kept, scored.end(), [&](const auto &a, const auto &b) {
        return a.first != b.first ? a.first > b.first : source(a.second) < source(b.second);
    });
    std::vector<Suggestion> out;
    std::transform(scored.begin(), kept, std::back_inserter(out),
        [&](const auto &one) { return Suggestion(source(one.second), one.first); });
    rankAndCut(out);
    return out;
}

std::vector<Suggestion> ReasonTables::tied(const VisitEvidence &seen) const
{
    const Nodes &sources = candidates.sources;
    const std::vector<double> start = startOf(linkage, seen.canonical.visit.findings, constants);
    const VectorXd e = valuesAt(start, seen.found) / std::accumulate(start.begin(), start.end(), 0.0);
    VectorXd y = VectorXd::Zero(static_cast<Index>(sources.size())); // G e, less what has passed through clear places
    const auto add = [&](std::size_t node, double amount) {
        const auto column = reach.at(node);
        y += amount * reach.diagonal(node) * Eigen::Map<const VectorXd>(column.data(), static_cast<Index>(column.size()));
    };
    for (std::size_t i = 0; i < seen.found.size(); ++i)
        add(seen.found[i], e[static_cast<Index>(i)]);
    if (!seen.clear.empty()) {
        Between between(walk, reach, sourceOf);
        const VectorXd x = between.block(seen.clear, seen.clear).ldlt().solve(between.block(seen.clear, seen.found) * e);
        for (std::size_t i = 0; i < seen.clear.size(); ++i)
            add(seen.clear[i], -x[static_cast<Index>(i)]);
    }
    std::vector<double> lift(sources.size());
    for (std::size_t s = 0; s < sources.size(); ++s)
        lift[s] = walk.scale(sources[s]) * y[static_cast<Index>(s)] / walk.everywhere()[sources[s]];
    if (seen.canonical.isItsOwnImage)
        symmetrise(lift, mirroredSource);
    std::vector<std::pair<double, std::size_t>> scored;
    for (std::size_t s = 0; s < sources.size(); ++s)
        if (lift[s] > least && !seen.isClear.contains(sources[s]))
            scored.emplace_back(lift[s], s);
    std::vector<Suggestion> out = best(std::move(scored));
    for (Suggestion &s : out)
        s.terms.push_back({"spread", s.score, {}});
    return out;
}

// What each finding says for or against a source, in bits against 'not explained', heaviest first; then its prior.
std::vector<Term> ReasonTables::termsOf(std::size_t source, const VisitEvidence &seen, std::span<const double> prior) const
{
    std::vector<std::pair<double, const Evidence *>> said;
    for (const Evidence &one : seen.evidence) {
        const Observation &o = one.observation;
        const double bits = o.weight * std::log2(o.likelihood(reach.at(o.node)[source]) / o.likelihood(0));
        if (!said.empty() && said.back().second->quality == one.quality && said.back().second->place == one.place)
            said.back().first += bits; // the two nodes of a midline segment
        else
            said.emplace_back(bits, &one);
    }
    std::stable_sort(
        said.begin(), said.end(), [](const auto &a, const auto &b) { return std::abs(a.first) > std::abs(b.first); });
    std::vector<Term> terms;
    terms.reserve(said.size() + 1);
    for (const auto &[bits, one] : said)
        terms.push_back({std::string(one->quality), bits, one->place});
    terms.push_back({"prior", std::log2(prior[source] / prior.back()), {}});
    return terms;
}

std::vector<Suggestion> ReasonTables::explained(
    const VisitEvidence &seen, const Posterior &posterior, std::span<const double> prior) const
{
    const double most = *std::max_element(posterior.of.begin(), posterior.of.end());
    std::vector<std::pair<double, std::size_t>> scored;
    for (std::size_t s = 0; s < candidates.sources.size(); ++s)
        if (!candidates.isWhole[s] || seen.isFound.contains(candidates.sources[s])) // else its parts stand for it
            scored.emplace_back(posterior.of[s] / most, s);
    std::vector<Suggestion> out = best(std::move(scored));
    for (Suggestion &s : out)
        s.terms = termsOf(sourceOf[nodeOf(s.place)], seen, prior);
    return out;
}

// From the nearest finding; of a finding, to the nearest other one.
void ReasonTables::addPaths(std::vector<Suggestion> &list, const VisitEvidence &seen, const PathTree &tree) const
{
    for (std::size_t i = 0; i < std::min(list.size(), pathsAtOnce); ++i) {
        const std::size_t node = nodeOf(list[i].place);
        list[i].path = stepsOf(linkage, seen.isFound.contains(node) ? nearest(linkage.graph(), node, seen.found) : tree.to(node));
    }
}

} // namespace raphe
