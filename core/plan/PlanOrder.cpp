#include "core/plan/PlanOrder.h"

#include <algorithm>

namespace raphe {

namespace {

constexpr double sameplace = 0.2; // overlap from which two structures lie at the same place; our choice
constexpr double atComplaint = 0.5; // of the greatest share of the score that nearness to the complaint can have; our choice

class Orders {
public:
    explicit Orders(std::size_t count) : m_reaches(count, std::vector<bool>(count, false)) { }

    void add(std::size_t first, std::size_t second, OrderReason reason)
    {
        if (first == second || m_reaches[first][second] || m_reaches[second][first])
            return;
        m_pairs.push_back({first, second, reason});
        for (std::size_t a = 0; a < m_reaches.size(); ++a)
            for (std::size_t b = 0; b < m_reaches.size(); ++b)
                if ((a == first || m_reaches[a][first]) && (b == second || m_reaches[second][b]))
                    m_reaches[a][b] = true;
    }
    [[nodiscard]] std::vector<OrderedPair> take() { return std::move(m_pairs); }

private:
    std::vector<OrderedPair> m_pairs;
    std::vector<std::vector<bool>> m_reaches;
};

const Structure &structureOf(const Regions &regions, const PlanCandidate &candidate)
{
    return regions.atlas().at(candidate.suggestion.place.structure);
}

bool isSkinOver(const Regions &regions, const PlanCandidate &a, const PlanCandidate &b)
{
    const Structure &skin = structureOf(regions, a);
    const Structure &deep = structureOf(regions, b);
    return skin.layer <= Layer::DeepFascia && skin.layer < deep.layer
        && goTogether(a.suggestion.place.side, b.suggestion.place.side) && regions.overlap(skin.id, deep.id) >= sameplace;
}

bool isJointUnder(const Regions &regions, const PlanCandidate &a, const PlanCandidate &b)
{
    const auto &crossings = regions.atlas().crossings();
    return b.technique->lengthens && goTogether(a.suggestion.place.side, b.suggestion.place.side)
        && std::any_of(crossings.begin(), crossings.end(), [&](const Crossing &c) {
               return c.joint == a.suggestion.place.structure && c.muscle == b.suggestion.place.structure;
           });
}

double nearnessOf(const PlanCandidate &candidate)
{
    for (const Term &term : candidate.suggestion.terms)
        if (term.name == "complaint")
            return term.value;
    return 0;
}

} // namespace

std::vector<OrderedPair> ordersOf(const Regions &regions, const std::vector<PlanCandidate> &candidates,
    const Preferences &preferences, const std::vector<std::pair<Place, Place>> &byHand)
{
    Orders orders(candidates.size());
    const auto forAll = [&](OrderReason reason, const auto &isBefore) {
        for (std::size_t i = 0; i < candidates.size(); ++i)
            for (std::size_t j = 0; j < candidates.size(); ++j)
                if (i != j && isBefore(candidates[i], candidates[j]))
                    orders.add(i, j, reason);
    };
    forAll(OrderReason::ByHand, [&](const PlanCandidate &a, const PlanCandidate &b) {
        return std::find(byHand.begin(), byHand.end(), std::pair(a.suggestion.place, b.suggestion.place)) != byHand.end();
    });
    forAll(OrderReason::SkinFirst, [&](const PlanCandidate &a, const PlanCandidate &b) { return isSkinOver(regions, a, b); });
    if (preferences.jointFirst)
        forAll(
            OrderReason::JointFirst, [&](const PlanCandidate &a, const PlanCandidate &b) { return isJointUnder(regions, a, b); });
    double nearest = 0;
    for (const PlanCandidate &candidate : candidates)
        nearest = std::max(nearest, nearnessOf(candidate));
    if (preferences.complaintFirst && nearest > 0)
        forAll(OrderReason::ComplaintFirst, [&](const PlanCandidate &a, const PlanCandidate &b) {
            return nearnessOf(a) >= atComplaint * nearest && nearnessOf(b) < atComplaint * nearest;
        });
    return orders.take();
}

} // namespace raphe
