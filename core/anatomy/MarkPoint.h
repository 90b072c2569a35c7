// Where on a drawing a mark for a place stands.
#pragma once

#include "core/anatomy/Drawing.h"

#include <optional>

namespace raphe {

struct DrawnPoint {
    View view{};
    Point point; // in the view's units, mirrored already: x has its sign
    bool operator==(const DrawnPoint &o) const { return view == o.view && point.x == o.point.x && point.y == o.point.y; }
};

/// A point well inside the structure's shape, in front or back, whichever shows more of it, else in the side view or an inset
/// (side and head: of the view that faces the place's side, or the right for a midline place); for a spot with a landmark
/// (origin, insertion) the point of the shape nearest to that landmark. A whole muscle that is drawn by its parts is marked on
/// the largest; what is hidden, on what it is part of. Nothing when none of these is drawn.
[[nodiscard]] std::optional<DrawnPoint> markPoint(const Atlas &atlas, const Body &body, const Place &place,
    std::optional<Spot> spot = {}, const std::optional<StructureId> &at = {});

/// The same in front or back only, as the printed page shows them.
[[nodiscard]] std::optional<DrawnPoint> markPointOnPage(const Atlas &atlas, const Body &body, const Place &place,
    std::optional<Spot> spot = {}, const std::optional<StructureId> &at = {});

/// The same within one view; nothing when that view does not draw the structure itself.
[[nodiscard]] std::optional<Point> markPointIn(const Atlas &atlas, const Drawing &drawing, const Place &place,
    std::optional<Spot> spot = {}, const std::optional<StructureId> &at = {});

} // namespace raphe
