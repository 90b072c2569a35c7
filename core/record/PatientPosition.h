// How the patient lies or sits. No state.
#pragma once

#include "core/base/Words.h"

namespace raphe {

/// Lying on the left side means right side up, and the reverse.
enum class Position { Prone, Supine, OnLeftSide, OnRightSide, Seated };
inline constexpr WordTable<Position, 5> positionWords{{{Position::Prone, "prone"}, {Position::Supine, "supine"},
    {Position::OnLeftSide, "on-left-side"}, {Position::OnRightSide, "on-right-side"}, {Position::Seated, "seated"}}};

[[nodiscard]] constexpr Position mirrored(Position position)
{
    switch (position) {
    case Position::OnLeftSide: return Position::OnRightSide;
    case Position::OnRightSide: return Position::OnLeftSide;
    case Position::Prone:
    case Position::Supine:
    case Position::Seated: break;
    }
    return position;
}

} // namespace raphe
