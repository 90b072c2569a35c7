#include "core/record/PlanWish.h"

namespace raphe {

PlanWish mirrored(const PlanWish &wish)
{
    PlanWish out;
    out.minutes = wish.minutes;
    out.refused = wish.refused;
    for (const Position position : wish.barred)
        out.barred.insert(mirrored(position));
    for (const Place &place : wish.pinned)
        out.pinned.insert(mirrored(place));
    for (const Place &place : wish.dropped)
        out.dropped.insert(mirrored(place));
    for (const auto &[place, technique] : wish.byHand)
        out.byHand.emplace(mirrored(place), technique);
    for (const auto &[first, second] : wish.ordered)
        out.ordered.emplace_back(mirrored(first), mirrored(second));
    return out;
}

} // namespace raphe
