// What practitioner and patient want of the plan of a visit's treatment: its time, positions, techniques, and what was changed in
// it by hand. Plain values; the JSON form is in PlanWishJson.h.
#pragma once

#include "core/anatomy/Place.h"
#include "core/record/PatientPosition.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace raphe {

struct PlanWish {
    static constexpr int usualMinutes = 20;
    static constexpr int mostMinutes = 240;

    std::optional<int> minutes; // until the patient leaves, 0 to mostMinutes
    std::set<Position> barred; // positions that the patient cannot take
    std::set<std::string> refused; // techniques that the patient does not want today, by id or by action
    std::set<Place> pinned;
    std::set<Place> dropped; // done already, or not wanted; never pinned as well
    std::map<Place, std::string> byHand; // techniques (id) chosen by hand
    std::vector<std::pair<Place, Place>> ordered; // the first before the second; what was said last stands first
    bool operator==(const PlanWish &) const = default;
};

[[nodiscard]] PlanWish mirrored(const PlanWish &wish);

} // namespace raphe
