#include "core/record/PlacesSince.h"

#include <algorithm>

namespace raphe {

PlacesSince placesSince(const Visit &now, const Visit &before)
{
    const auto holds = [](const std::vector<Place> &places, const Place &place) {
        return std::find(places.begin(), places.end(), place) != places.end();
    };
    PlacesSince out;
    for (const Place &place : now.complaintAt)
        (holds(before.complaintAt, place) ? out.same : out.fresh).push_back(place);
    std::copy_if(before.complaintAt.begin(), before.complaintAt.end(), std::back_inserter(out.gone),
        [&](const Place &place) { return !holds(now.complaintAt, place); });
    return out;
}

} // namespace raphe
