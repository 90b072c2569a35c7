#include "core/anatomy/Outline.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace raphe {

std::vector<Polygon> flattened(const Outline &outline)
{
    constexpr int chords = 12;
    std::vector<Polygon> out;
    for (const Contour &contour : outline) {
        Polygon polygon{contour.start};
        Point from = contour.start;
        for (const Cubic &c : contour.segments) {
            for (int i = 1; i <= chords; ++i) {
                const double t = static_cast<double>(i) / chords;
                const double u = 1 - t;
                const double b0 = u * u * u;
                const double b1 = 3 * u * u * t;
                const double b2 = 3 * u * t * t;
                const double b3 = t * t * t;
                polygon.push_back({b0 * from.x + b1 * c.control1.x + b2 * c.control2.x + b3 * c.end.x,
                    b0 * from.y + b1 * c.control1.y + b2 * c.control2.y + b3 * c.end.y});
            }
            from = c.end;
        }
        out.push_back(std::move(polygon));
    }
    return out;
}

Box boundsOf(const std::vector<Polygon> &polygons)
{
    constexpr double inf = std::numeric_limits<double>::infinity();
    Box box{inf, inf, -inf, -inf};
    for (const Polygon &polygon : polygons)
        for (const Point &p : polygon) {
            box.left = std::min(box.left, p.x);
            box.right = std::max(box.right, p.x);
            box.top = std::min(box.top, p.y);
            box.bottom = std::max(box.bottom, p.y);
        }
    return box;
}

bool contains(const std::vector<Polygon> &polygons, Point p)
{
    int winding = 0;
    for (const Polygon &polygon : polygons) {
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Point &a = polygon[i];
            const Point &b = polygon[(i + 1) % polygon.size()];
            const double cross = (b.x - a.x) * (p.y - a.y) - (p.x - a.x) * (b.y - a.y);
            if (a.y <= p.y && b.y > p.y && cross > 0)
                ++winding;
            else if (a.y > p.y && b.y <= p.y && cross < 0)
                --winding;
        }
    }
    return winding != 0;
}

double distanceToEdge(const std::vector<Polygon> &polygons, Point p)
{
    double best = std::numeric_limits<double>::infinity();
    for (const Polygon &polygon : polygons)
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Point &a = polygon[i];
            const Point &b = polygon[(i + 1) % polygon.size()];
            const double dx = b.x - a.x;
            const double dy = b.y - a.y;
            const double length2 = dx * dx + dy * dy;
            const double t = length2 > 0 ? std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / length2, 0.0, 1.0) : 0.0;
            best = std::min(best, std::hypot(p.x - a.x - t * dx, p.y - a.y - t * dy));
        }
    return best;
}

std::vector<Interval> rowOf(const std::vector<Polygon> &polygons, double y)
{
    std::vector<std::pair<double, int>> crossings; // x, and the change of winding there
    for (const Polygon &polygon : polygons)
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Point &a = polygon[i];
            const Point &b = polygon[(i + 1) % polygon.size()];
            if ((a.y <= y) != (b.y <= y))
                crossings.emplace_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y), a.y <= y ? 1 : -1);
        }
    std::sort(crossings.begin(), crossings.end());
    std::vector<Interval> row;
    int winding = 0;
    for (const auto &[x, change] : crossings) {
        if (winding == 0)
            row.push_back({x, x});
        winding += change;
        row.back().to = x;
    }
    return row;
}

double areaOf(const std::vector<Polygon> &polygons)
{
    double sum = 0;
    for (const Polygon &polygon : polygons)
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Point &a = polygon[i];
            const Point &b = polygon[(i + 1) % polygon.size()];
            sum += a.x * b.y - b.x * a.y;
        }
    return std::abs(sum) / 2;
}

} // namespace raphe
