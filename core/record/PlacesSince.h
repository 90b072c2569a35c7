// What changed between two visits of where it hurts. A plain function of plain values; any thread.
#pragma once

#include "core/record/Visit.h"

#include <vector>

namespace raphe {

/// Each place of the two in one list, in its visit's order.
struct PlacesSince {
    std::vector<Place> fresh; // hurts now, did not then
    std::vector<Place> gone; // hurt then, and no longer
    std::vector<Place> same;
};

[[nodiscard]] PlacesSince placesSince(const Visit &now, const Visit &before);

} // namespace raphe
