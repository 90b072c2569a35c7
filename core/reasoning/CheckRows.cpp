// The rows of what to check next, from the tables. Each row's bits are what its check adds to the checks above it: the first is
// the most telling by itself, and one that would only say the same again comes late. Found by always taking the best next one,
// with bits that are only worked out anew where they could still be the best: more checks never make another tell more.
#include "core/reasoning/ReasonTables.h"

#include <algorithm>
#include <queue>

namespace raphe {

namespace {

using Nodes = std::vector<std::size_t>;

constexpr double leastBits = 1e-12;
constexpr std::size_t outcomesAtMost = 16; // of four checks together: five rows are exact, further ones add to the first four

struct OpenCheck {
    std::size_t check = 0;
    double bits = 0; // at most
    std::size_t after = 0; // exact while there are so many outcomes; 0: not even by itself
};

} // namespace

std::vector<Suggestion> ReasonTables::checks(
    const VisitEvidence &seen, const Posterior &posterior, const std::function<bool(const Place &)> &mayCheck) const
{
    const auto placeOf = [&](std::size_t k) -> const Place & { return linkage.places()[candidates.checks[k]]; };
    const auto isWorse = [&](const OpenCheck &a, const OpenCheck &b) {
        return a.bits != b.bits ? a.bits < b.bits : placeOf(b.check) < placeOf(a.check);
    };
    std::priority_queue<OpenCheck, std::vector<OpenCheck>, decltype(isWorse)> open(isWorse);
    const std::set<std::size_t> examined = examinedNodes(linkage, seen.canonical.visit.findings);
    // Where neither the findings nor the complaint make trouble likelier than before, a check is not worth a row.
    constexpr double worthwhile = 1.1; // our choice: a tenth likelier
    const double before = posterior.unexplained / candidates.prior.back();
    Outcomes outcomes(reach, check, posterior);
    for (std::size_t k = 0; k < candidates.checks.size(); ++k) {
        const std::size_t own = sourceOf[candidates.checks[k]];
        const bool isLikelier = posterior.of[own] > worthwhile * before * candidates.prior[own];
        if (!isLikelier || examined.contains(candidates.checks[k]))
            continue;
        if (const double bits = outcomes.bitsAtMost(k); bits > leastBits)
            open.push({k, bits, 0});
    }

    std::vector<Suggestion> out;
    std::set<std::pair<std::string, Side>> shown;
    const auto isOffered = [&](const Place &place) {
        return !shown.contains({checkedTogether(place), place.side})
            && (!mayCheck || mayCheck(seen.canonical.isMirrored ? mirrored(place) : place));
    };
    while (!open.empty() && out.size() < suggestionsAtMost) {
        const OpenCheck next = open.top();
        open.pop();
        const auto putBack = [&](double bits, std::size_t after) {
            if (bits > leastBits)
                open.push({next.check, bits, after});
        };
        if (next.after == 0) {
            putBack(outcomes.bitsAlone(next.check), 1);
            continue;
        }
        if (!isOffered(placeOf(next.check)))
            continue;
        if (next.after != outcomes.count()) {
            putBack(std::min(next.bits, outcomes.bitsOf(next.check)), outcomes.count());
            continue;
        }
        Nodes taken{next.check};
        if (const std::size_t image = mirroredCheck[next.check]; // no telling left from right
            seen.canonical.isItsOwnImage && image != next.check && isOffered(placeOf(image)))
            taken.push_back(image);
        for (const std::size_t k : taken) {
            Suggestion s(placeOf(k), next.bits);
            s.terms.push_back({"bits", s.score, {}});
            s.position = positionFor(regions.body(), s.place);
            shown.emplace(checkedTogether(s.place), s.place.side);
            out.push_back(std::move(s));
        }
        if (outcomes.count() << taken.size() <= outcomesAtMost)
            for (const std::size_t k : taken)
                outcomes.add(k);
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
    const auto own = static_cast<std::size_t>(
        std::lower_bound(candidates.checks.begin(), candidates.checks.end(), node) - candidates.checks.begin());
    const Detection &detection = check.detection(own);
    Nodes rivals(leading.begin(), leading.end());
    if (std::find(rivals.begin(), rivals.end(), sourceOf[node]) == rivals.end())
        rivals.push_back(sourceOf[node]);
    std::size_t one = sourceOf[node];
    std::size_t other = Between::notASource;
    double most = -1;
    for (const std::size_t a : rivals) {
        const double high = detection.chance(reachHere[a]);
        const auto consider = [&](std::size_t b, double p, double low) {
            const double worth = posterior.of[a] * p * (high - low) * (high - low);
            if (high > low && worth > most) {
                most = worth;
                one = a;
                other = b;
            }
        };
        for (const std::size_t b : rivals)
            consider(b, posterior.of[b], detection.chance(reachHere[b]));
        consider(Between::notASource, posterior.unexplained, detection.leak);
    }
    return {source(one), other == Between::notASource ? std::nullopt : std::optional(source(other))};
}

} // namespace raphe
