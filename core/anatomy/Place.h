// Where on the body: structure, side and spot. Plain values; mirroring a place twice gives the place back.
#pragma once

#include "core/base/Words.h"

#include <compare>
#include <optional>
#include <string>

namespace raphe {

enum class Side { Left, Right, Midline };
inline constexpr WordTable<Side, 3> sideWords{{{Side::Left, "left"}, {Side::Right, "right"}, {Side::Midline, "midline"}}};

/// Side: from the patient's right or, mirrored, left. Sole, palm and head are insets at a larger scale.
enum class View { Front, Back, Side, Sole, Palm, Head };
inline constexpr WordTable<View, 6> viewWords{{{View::Front, "front"}, {View::Back, "back"}, {View::Side, "side"},
    {View::Sole, "sole"}, {View::Palm, "palm"}, {View::Head, "head"}}};

/// Drawn whole, from one side; the other views are drawn as the half that is mirrored.
[[nodiscard]] constexpr bool isWhole(View view)
{
    return view == View::Side || view == View::Head;
}
[[nodiscard]] constexpr bool isInset(View view)
{
    return view == View::Sole || view == View::Palm || view == View::Head;
}

enum class Spot { Belly, Origin, Insertion, Border, Junction };
inline constexpr WordTable<Spot, 5> spotWords{{{Spot::Belly, "belly"}, {Spot::Origin, "origin"}, {Spot::Insertion, "insertion"},
    {Spot::Border, "border"}, {Spot::Junction, "junction"}}};

[[nodiscard]] constexpr Side mirrored(Side side)
{
    switch (side) {
    case Side::Left: return Side::Right;
    case Side::Right: return Side::Left;
    case Side::Midline: break;
    }
    return Side::Midline;
}

/// Whether what is said of the one concerns the other: a side goes with itself, and the midline with both.
[[nodiscard]] constexpr bool goTogether(Side a, Side b)
{
    return a == b || a == Side::Midline || b == Side::Midline;
}

/// Id of a structure of the atlas: lower case letters and digits joined by hyphens.
struct StructureId {
    std::string value;
    auto operator<=>(const StructureId &) const = default;
};

[[nodiscard]] bool isWellFormed(const StructureId &id);

struct Place {
    StructureId structure;
    Side side = Side::Midline;
    auto operator<=>(const Place &) const = default;
};

[[nodiscard]] inline Place mirrored(Place place)
{
    place.side = mirrored(place.side);
    return place;
}

} // namespace raphe
