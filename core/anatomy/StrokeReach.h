// How far a brush's line is from a point or from another line, in units of the view. The brush's own breadth is not counted: what
// is as near as its radius is painted. Plain functions of plain values; nothing fails, any thread. A stroke has at least one
// point.
#pragma once

#include "core/anatomy/BrushStroke.h"

namespace raphe {

/// From a point to the straight piece between two others.
[[nodiscard]] double distanceToPiece(Point p, Point from, Point to);
/// From a point to the stroke's line.
[[nodiscard]] double distanceToLine(const BrushStroke &stroke, Point p);
/// From a straight piece to the stroke's line; 0 where they cross.
[[nodiscard]] double distanceToLine(const BrushStroke &stroke, Point from, Point to);

/// The same line with fewer points: none of those left out is farther than `tolerance` from it. The ends stay.
[[nodiscard]] std::vector<Point> thinned(const std::vector<Point> &line, double tolerance);

} // namespace raphe
