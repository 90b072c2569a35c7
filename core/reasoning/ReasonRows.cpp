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
    std::vector<Suggestion> out;
    for (std::size_t s = 0; s < sources.size(); ++s)
        if (lift[s] > least && !seen.isClear.contains(sources[s]))
            out.emplace_back(source(s), lift[s]);
    rankAndCut(out);
    for (Suggestion &s : out)
        s.terms.push_back({"spread", s.score, {}});
    return out;
}

// What each finding says for or against a source, in bits against 'not explained', heaviest first; then its prior.
std::vector<Term> ReasonTables::termsOf(std::size_t source, const VisitEvidence &seen, std::span<const double> prior) const
{
    std::vector<Term> terms;
    for (const Evidence &one : seen.evidence) {
        const double h = reach.at(one.observation.node)[source];
        const double bits = (one.observation.logLikelihood(h) - one.observation.logLikelihood(0)) / std::log(2.0);
        const auto same = std::find_if(
            terms.begin(), terms.end(), [&](const Term &term) { return term.name == one.quality && term.at == one.place; });
        if (same != terms.end())
            same->value += bits; // the two nodes of a midline segment
        else
            terms.push_back({std::string(one.quality), bits, one.place});
    }
    std::stable_sort(
        terms.begin(), terms.end(), [](const Term &a, const Term &b) { return std::abs(a.value) > std::abs(b.value); });
    terms.push_back({"prior", std::log2(prior[source] / prior.back()), {}});
    return terms;
}

std::vector<Suggestion> ReasonTables::explained(
    const VisitEvidence &seen, const Posterior &posterior, std::span<const double> prior) const
{
    const double best = *std::max_element(posterior.of.begin(), posterior.of.end());
    std::vector<Suggestion> out;
    for (std::size_t s = 0; s < candidates.sources.size(); ++s)
        if (!candidates.isWhole[s] || seen.isFound.contains(candidates.sources[s])) // else its parts stand for it
            out.emplace_back(source(s), posterior.of[s] / best);
    rankAndCut(out);
    for (Suggestion &s : out)
        s.terms = termsOf(sourceOf[nodeOf(s.place)], seen, prior);
    return out;
}

std::vector<Suggestion> ReasonTables::checks(
    const VisitEvidence &seen, const Posterior &posterior, const std::function<bool(const Place &)> &mayCheck) const
{
    std::vector<double> gains = check.gains(reach, posterior);
    if (seen.canonical.isItsOwnImage)
        symmetrise(gains, mirroredCheck);
    const std::set<std::size_t> examined = examinedNodes(linkage, seen.canonical.visit.findings);
    // Where neither the findings nor the complaint make trouble likelier than before, a check is not worth a row.
    constexpr double worthwhile = 1.1; // our choice: a tenth likelier
    const double before = posterior.unexplained / candidates.prior.back();
    std::vector<Suggestion> all;
    for (std::size_t k = 0; k < gains.size(); ++k) {
        const std::size_t node = candidates.checks[k];
        const std::size_t own = sourceOf[node];
        if (gains[k] > least && !examined.contains(node) && posterior.of[own] > worthwhile * before * candidates.prior[own])
            all.emplace_back(linkage.places()[node], gains[k]);
    }
    std::sort(all.begin(), all.end(),
        [](const Suggestion &a, const Suggestion &b) { return a.score != b.score ? a.score > b.score : a.place < b.place; });
    std::vector<Suggestion> out;
    std::set<std::pair<std::string, Side>> shown;
    for (Suggestion &s : all) {
        if (out.size() == suggestionsAtMost)
            break;
        if (!shown.emplace(checkedTogether(s.place), s.place.side).second)
            continue;
        if (mayCheck && !mayCheck(seen.canonical.isMirrored ? mirrored(s.place) : s.place))
            continue;
        s.terms.push_back({"bits", s.score, {}});
        s.position = positionFor(regions.body(), s.place);
        out.push_back(std::move(s));
    }
    rankAndCut(out);
    return out;
}

// Which two of the leading sources, or the place itself, the check would tell apart best. No second: from 'nothing found
// explains it'.
std::pair<Place, std::optional<Place>> ReasonTables::separates(
    const Suggestion &s, const Posterior &posterior, std::span<const std::size_t> leading) const
{
    const std::size_t node = nodeOf(s.place);
    const auto reachHere = reach.at(node);
    Nodes rivals(leading.begin(), leading.end());
    if (std::find(rivals.begin(), rivals.end(), sourceOf[node]) == rivals.end())
        rivals.push_back(sourceOf[node]);
    std::size_t one = sourceOf[node];
    std::size_t other = Between::notASource;
    double most = -1;
    for (const std::size_t a : rivals) {
        const double high = check.detection().chance(reachHere[a]);
        const auto consider = [&](std::size_t b, double p, double low) {
            const double worth = posterior.of[a] * p * (high - low) * (high - low);
            if (high > low && worth > most) {
                most = worth;
                one = a;
                other = b;
            }
        };
        for (const std::size_t b : rivals)
            consider(b, posterior.of[b], check.detection().chance(reachHere[b]));
        consider(Between::notASource, posterior.unexplained, check.detection().leak);
    }
    return {source(one), other == Between::notASource ? std::nullopt : std::optional(source(other))};
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
