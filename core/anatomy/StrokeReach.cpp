#include "core/anatomy/StrokeReach.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace raphe {

namespace {

// Twice the area of the triangle; its sign says on which side of the line from a to b the point c lies.
double turn(Point a, Point b, Point c)
{
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(Point a, Point b, Point c, Point d)
{
    return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

double distanceOfPieces(Point a, Point b, Point c, Point d)
{
    if (cross(a, b, c, d))
        return 0;
    return std::min({distanceToPiece(a, c, d), distanceToPiece(b, c, d), distanceToPiece(c, a, b), distanceToPiece(d, a, b)});
}

} // namespace

double distanceToPiece(Point p, Point from, Point to)
{
    const double dx = to.x - from.x;
    const double dy = to.y - from.y;
    const double length2 = dx * dx + dy * dy;
    const double t = length2 > 0 ? std::clamp(((p.x - from.x) * dx + (p.y - from.y) * dy) / length2, 0.0, 1.0) : 0;
    const double ex = p.x - from.x - t * dx;
    const double ey = p.y - from.y - t * dy;
    return std::sqrt(ex * ex + ey * ey);
}

double distanceToLine(const BrushStroke &stroke, Point p)
{
    return distanceToLine(stroke, p, p);
}

double distanceToLine(const BrushStroke &stroke, Point from, Point to)
{
    const std::vector<Point> &points = stroke.points;
    if (points.size() == 1)
        return distanceToPiece(points.front(), from, to);
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < points.size(); ++i)
        nearest = std::min(nearest, distanceOfPieces(from, to, points[i - 1], points[i]));
    return nearest;
}

// Halves the line at the point that is farthest from its chord, for as long as one is too far (Douglas and Peucker's way).
std::vector<Point> thinned(const std::vector<Point> &line, double tolerance)
{
    if (line.size() < 3)
        return line;
    std::vector<bool> keep(line.size());
    keep.front() = keep.back() = true;
    std::vector<std::pair<std::size_t, std::size_t>> open{{0, line.size() - 1}};
    while (!open.empty()) {
        const auto [first, last] = open.back();
        open.pop_back();
        std::size_t farthest = first;
        double distance = tolerance;
        for (std::size_t i = first + 1; i < last; ++i)
            if (const double d = distanceToPiece(line[i], line[first], line[last]); d > distance) {
                distance = d;
                farthest = i;
            }
        if (farthest == first)
            continue;
        keep[farthest] = true;
        open.emplace_back(first, farthest);
        open.emplace_back(farthest, last);
    }
    std::vector<Point> out;
    for (std::size_t i = 0; i < line.size(); ++i)
        if (keep[i])
            out.push_back(line[i]);
    return out;
}

} // namespace raphe
