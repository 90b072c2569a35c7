// A number as text, with a point whatever the user's locale: std::to_string writes a comma in some.
#pragma once

#include <charconv>
#include <string>

namespace raphe {

/// The shortest digits that give the number back: "20", "32.5". Finite numbers below 1e15.
[[nodiscard]] inline std::string numberText(double number)
{
    char digits[32];
    const auto end = std::to_chars(std::begin(digits), std::end(digits), number, std::chars_format::fixed);
    return {std::begin(digits), end.ptr};
}

} // namespace raphe
