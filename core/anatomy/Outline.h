// Plane geometry of the drawings, without a GUI library. Units: 1/1000 of stature, y down from the crown.
// An Outline is cubic Bezier contours filled by the nonzero rule. Plain values.
#pragma once

#include <vector>

namespace raphe {

struct Point {
    double x = 0;
    double y = 0;
    bool operator==(const Point &) const = default;
};

/// A cubic from the previous end; a straight line when both controls lie on its ends.
struct Cubic {
    Point control1;
    Point control2;
    Point end;
};

struct Contour {
    Point start;
    std::vector<Cubic> segments;
    bool closed = false;
};

struct Box {
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;
    [[nodiscard]] bool contains(Point p) const { return p.x >= left && p.x <= right && p.y >= top && p.y <= bottom; }
};

/// What every view shows at most, insets too: the drawing files' viewBox.
inline constexpr Box viewFrame{-500, 0, 500, 1000};

using Outline = std::vector<Contour>;
using Polygon = std::vector<Point>;

/// Straight pieces for point queries; each cubic becomes 12 chords (within 0.05 units on our shapes).
[[nodiscard]] std::vector<Polygon> flattened(const Outline &outline);
[[nodiscard]] Box boundsOf(const std::vector<Polygon> &polygons);
/// Nonzero winding; the boundary itself counts for one of two neighbours.
[[nodiscard]] bool contains(const std::vector<Polygon> &polygons, Point p);
/// From a point to the nearest edge, inside or outside, in units.
[[nodiscard]] double distanceToEdge(const std::vector<Polygon> &polygons, Point p);
/// Where a horizontal line runs inside, by the same rule: stretches from left to right.
struct Interval {
    double from = 0;
    double to = 0;
};
[[nodiscard]] std::vector<Interval> rowOf(const std::vector<Polygon> &polygons, double y);
/// Area by the shoelace formula, in square units; contours that run against the first one count as holes.
[[nodiscard]] double areaOf(const std::vector<Polygon> &polygons);

} // namespace raphe
