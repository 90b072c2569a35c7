// The session plan as a problem of whole numbers, without anatomy: which places to work in the time that is left, in which order,
// and how the patient lies at each. Plain values.
//
// Written down: of the places choose some and an order, and for each a position out of those allowed, so that the sum of the
// values is greatest; among those plans, the one with fewest turns of the patient; among those, the one that takes least time;
// among those, the one with the worthier place first. Under:
//  - the seconds of all steps, turns, wiping, uncovering and rests add up to no more than there are;
//  - at most `turnsAtMost` turns, the first position being a turn when the patient lies otherwise already;
//  - of each pair in `before` the first is worked before the second, when both are;
//  - what is pinned is worked.
// Times between steps: a turn when the position changes; wiping when a step needs dry skin and oil is on it; uncovering when a
// step needs another part bare than the step before; a rest when deep work follows deep work in the same area.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace raphe::plan {

inline constexpr std::size_t positionCount = 5; // as Position (Position.h)
using PositionSet = std::uint8_t; // bit p: position p

/// What a step needs of the skin, and how it leaves it. Any: leaves it as it was.
enum class Skin { Dry, Any, Oiled };

struct ProblemPlace {
    int value = 1; // at least 1
    int seconds = 1; // of work, at least 1
    PositionSet positions = 0; // none: cannot be reached
    Skin skin = Skin::Any;
    std::array<int, positionCount> cover{}; // the part that must be bare in each position; 0: none
    int deepArea = 0; // deep work in this area; 0: not deep
};

/// How things are when the plan begins.
struct ProblemStart {
    std::optional<std::size_t> position; // nothing: the patient has not lain down
    bool oiled = false;
    int cover = 0;
    int deepArea = 0;
};

struct ProblemTimes {
    std::array<std::array<int, positionCount>, positionCount> turn{}; // seconds from one position to another
    int wipe = 0; // seconds
    int uncover = 0;
    int rest = 0;
};

struct Problem {
    std::vector<ProblemPlace> places;
    std::vector<std::pair<std::size_t, std::size_t>> before; // no cycle
    std::vector<std::size_t> pinned;
    int seconds = 0; // at most mostSeconds
    int turnsAtMost = 2; // at most mostTurns
    ProblemTimes times;
    ProblemStart start;
};

inline constexpr int mostSeconds = 4 * 3600;
inline constexpr int mostTurns = 2;
/// Places that are searched in full.
inline constexpr std::size_t exactAtMost = 16;

struct ProblemStep {
    std::size_t place = 0; // of Problem::places
    std::size_t position = 0;
    // Seconds before the work begins.
    int turn = 0;
    int wipe = 0;
    int uncover = 0;
    int rest = 0;
    bool operator==(const ProblemStep &) const = default;
};

struct Solution {
    bool isPossible = false; // false: what is pinned does not fit
    std::vector<ProblemStep> steps;
    int value = 0;
    int turns = 0;
    int seconds = 0; // of everything
    int bound = 0; // no plan is worth more; equal to value when the plan is proved best
    bool operator==(const Solution &) const = default;
};

} // namespace raphe::plan
