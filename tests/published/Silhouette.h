// Measures of a drawing: where a horizontal line meets the silhouette, extents of shapes, samples of the plane.
#pragma once

#include "core/anatomy/Drawing.h"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

namespace raphe::test {

/// A stretch of a horizontal line that lies within the half figure: trunk or limb.
struct Stretch {
    double from = 0;
    double to = 0;
    [[nodiscard]] double breadth() const { return to - from; }
};

class Silhouette {
public:
    explicit Silhouette(const Drawing &drawing) : m_polygons(flattened(drawing.silhouette())) { }

    [[nodiscard]] const std::vector<Polygon> &polygons() const { return m_polygons; }
    [[nodiscard]] const Polygon &line() const { return m_polygons.front(); }
    [[nodiscard]] bool holds(Point p) const { return contains(m_polygons, p); }

    /// From the midline outwards. The polygon closes along x = 0, so that a stretch of the trunk begins there.
    [[nodiscard]] std::vector<Stretch> at(double y) const
    {
        std::vector<double> xs;
        const Polygon &p = line();
        for (std::size_t i = 0; i < p.size(); ++i) {
            const Point &a = p[i];
            const Point &b = p[(i + 1) % p.size()];
            if ((a.y <= y) != (b.y <= y))
                xs.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
        }
        std::sort(xs.begin(), xs.end());
        std::vector<Stretch> out;
        for (std::size_t i = 0; i + 1 < xs.size(); i += 2)
            out.push_back({xs[i], xs[i + 1]});
        return out;
    }

    /// Outer edge of the innermost stretch: head, neck, trunk, then the leg.
    [[nodiscard]] double edge(double y) const
    {
        const auto stretches = at(y);
        if (stretches.empty())
            throw std::runtime_error("the silhouette has nothing at y " + std::to_string(y));
        return stretches.front().to;
    }

    /// Largest and smallest of f(y) between two heights.
    template <class F> [[nodiscard]] static double largest(double top, double bottom, F f)
    {
        double value = f(top);
        for (double y = top; y <= bottom; ++y)
            value = std::max(value, f(y));
        return value;
    }
    template <class F> [[nodiscard]] static double smallest(double top, double bottom, F f)
    {
        return -largest(top, bottom, [&](double y) { return -f(y); });
    }

private:
    std::vector<Polygon> m_polygons;
};

[[nodiscard]] inline Box boundsOfDrawn(const Drawing &drawing, const std::string &id)
{
    for (const DrawnShape &shape : drawing.shapes())
        if (shape.structure.value == id)
            return shape.bounds;
    throw std::runtime_error(id + " is not drawn in the " + std::string(wordOf(viewWords, drawing.view())) + " view");
}

[[nodiscard]] inline double middleY(const Box &box)
{
    return (box.top + box.bottom) / 2;
}

} // namespace raphe::test
