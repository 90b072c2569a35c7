// Seconds for each number of turns side by side in one word, for the search of Solve.cpp. Plain functions.
#pragma once

#include "core/plan/PlanProblem.h"

#include <cstdint>

namespace raphe::plan {

// The least seconds of a tail of the plan with 0, 1 and 2 turns in it, in three lanes of 16 bits. `never` in a lane: no such
// tail.
using Lanes = std::uint64_t;
inline constexpr Lanes never = 0x7fff;
inline constexpr Lanes noTail = 0x7fff7fff7fffU;
inline constexpr Lanes ones = 0x000100010001U;
inline constexpr Lanes highs = 0x800080008000U;
static_assert(2 * mostSeconds < static_cast<int>(never), "sums of two lanes stay below the high bit");

/// Each `seconds` (0 to mostSeconds) later.
[[nodiscard]] constexpr Lanes later(Lanes lanes, int seconds)
{
    const Lanes sum = lanes + static_cast<Lanes>(seconds) * ones;
    const Lanes over = (sum & highs) >> 15U; // beyond `never` is never
    return (sum & ~(over * 0xffffU)) | (over * never);
}
/// The lesser of the two in each lane.
[[nodiscard]] constexpr Lanes earliest(Lanes a, Lanes b)
{
    const Lanes isNotLess = (((a | highs) - b) & highs) >> 15U; // a >= b, in its lane
    const Lanes chooseB = isNotLess * 0xffffU;
    return (a & ~chooseB) | (b & chooseB);
}
/// With one turn more.
[[nodiscard]] constexpr Lanes withTurn(Lanes lanes)
{
    return ((lanes << 16U) | never) & noTail;
}
[[nodiscard]] constexpr int secondsOf(Lanes lanes, int turns)
{
    return static_cast<int>((lanes >> (16U * static_cast<unsigned>(turns))) & 0x7fffU);
}

} // namespace raphe::plan
