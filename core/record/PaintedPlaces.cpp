#include "core/record/PaintedPlaces.h"

#include "core/anatomy/Atlas.h"
#include "core/anatomy/StrokeReach.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <tuple>

namespace raphe {

namespace {

constexpr double step = 2;
constexpr double fineStep = 1;
constexpr double fineBelow = 6; // radius of the brush

// The painted points of the grid over the view; a flag a point.
class Grid {
public:
    explicit Grid(double apart)
        : m_apart(apart),
          m_columns(index(viewFrame.right - viewFrame.left)),
          m_rows(index(viewFrame.bottom)),
          m_painted(m_columns * m_rows)
    {
    }

    [[nodiscard]] std::size_t columns() const { return m_columns; }
    [[nodiscard]] std::size_t rows() const { return m_rows; }
    [[nodiscard]] bool isPainted(std::size_t column, std::size_t row) const { return m_painted[row * m_columns + column]; }
    // Counted from the midline, so that the mirrored column has the mirrored x to the last bit.
    [[nodiscard]] Point at(std::size_t column, std::size_t row) const
    {
        const std::size_t half = m_columns / 2;
        const double fromMidline = static_cast<double>(column) - static_cast<double>(half) + 0.5;
        return {fromMidline * m_apart, (static_cast<double>(row) + 0.5) * m_apart};
    }
    void paint(Point from, Point to, double radius)
    {
        const auto [left, right] = std::minmax(from.x, to.x);
        const auto [top, bottom] = std::minmax(from.y, to.y);
        const std::size_t lastColumn = std::min(index(right + radius - viewFrame.left) + 1, m_columns);
        const std::size_t lastRow = std::min(index(bottom + radius) + 1, m_rows);
        for (std::size_t row = index(top - radius); row < lastRow; ++row)
            for (std::size_t column = index(left - radius - viewFrame.left); column < lastColumn; ++column)
                if (!isPainted(column, row) && distanceToPiece(at(column, row), from, to) <= radius)
                    m_painted[row * m_columns + column] = true;
    }

private:
    // Of the cell in which a distance from the frame's edge ends; the margin takes what rounding leaves open.
    [[nodiscard]] std::size_t index(double distance) const
    {
        return static_cast<std::size_t>(std::max(std::floor(distance / m_apart), 0.0));
    }

    double m_apart;
    std::size_t m_columns;
    std::size_t m_rows;
    std::vector<bool> m_painted;
};

Grid painted(const PainPatch &patch)
{
    const bool fine = std::any_of(
        patch.strokes.begin(), patch.strokes.end(), [](const BrushStroke &stroke) { return stroke.radius < fineBelow; });
    Grid grid(fine ? fineStep : step);
    for (const BrushStroke &stroke : patch.strokes)
        for (std::size_t i = 0; i < stroke.points.size(); ++i)
            grid.paint(stroke.points[i > 0 ? i - 1 : 0], stroke.points[i], stroke.radius);
    return grid;
}

} // namespace

std::optional<Place> skinAt(const Drawing &drawing, const Atlas &atlas, Point p, Side facing)
{
    for (const UnderHit &hit : drawing.under(atlas, p, facing))
        if (atlas.at(hit.place.structure).kind == Kind::SurfaceRegion)
            return hit.place;
    return std::nullopt;
}

std::vector<PaintedPlace> paintedPlaces(const PainPatch &patch, const Drawing &drawing, const Atlas &atlas)
{
    const Grid grid = painted(patch);
    std::map<Place, int> counts;
    int all = 0;
    for (std::size_t row = 0; row < grid.rows(); ++row)
        for (std::size_t column = 0; column < grid.columns(); ++column)
            if (grid.isPainted(column, row))
                if (const auto place = skinAt(drawing, atlas, grid.at(column, row), patch.facing)) {
                    ++counts[*place];
                    ++all;
                }
    std::vector<PaintedPlace> places;
    for (const auto &[place, count] : counts)
        if (const double share = static_cast<double>(count) / all; share >= leastPaintedShare)
            places.push_back({place, share});
    std::sort(places.begin(), places.end(),
        [](const PaintedPlace &a, const PaintedPlace &b) { return std::tie(b.share, a.place) < std::tie(a.share, b.place); });
    return places;
}

} // namespace raphe
