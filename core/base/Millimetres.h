// Lengths on the body, so that they are never mixed up with fractions of stature or drawing units.
#pragma once

#include <compare>

namespace raphe {

struct Millimetres {
    double value = 0;
    auto operator<=>(const Millimetres &) const = default;
};

} // namespace raphe
