// How much it hurts, in the patient's number.
#pragma once

#include <compare>

namespace raphe {

/// Numeric rating scale, whole numbers from 0 (no pain) to 10 (the worst that the patient can think of).
struct PainScore {
    static constexpr int highest = 10;
    int value = 0;
    auto operator<=>(const PainScore &) const = default;
};

} // namespace raphe
