#include "core/anatomy/Drawing.h"

#include "core/anatomy/Atlas.h"
#include "core/anatomy/AtlasReader.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace raphe {

Drawing::Drawing(View view, Outline silhouette, std::vector<DrawnShape> shapes, double scale)
    : m_view(view), m_scale(scale), m_silhouette(std::move(silhouette)), m_shapes(std::move(shapes))
{
    m_frame = boundsOf(flattened(m_silhouette));
    if (!isWhole(view))
        m_frame.left = -m_frame.right;
    std::stable_sort(
        m_shapes.begin(), m_shapes.end(), [](const DrawnShape &a, const DrawnShape &b) { return a.layer > b.layer; });
    m_cells.resize(cellAt({500, 1000}) + 1);
    for (std::size_t i = m_shapes.size(); i-- > 0;) {
        DrawnShape &shape = m_shapes[i];
        shape.polygons = flattened(shape.outline);
        shape.bounds = boundsOf(shape.polygons);
        for (double y = std::floor(shape.bounds.top / cell) * cell; y <= shape.bounds.bottom; y += cell)
            for (double x = std::floor(shape.bounds.left / cell) * cell; x <= shape.bounds.right; x += cell)
                if (auto &there = m_cells[cellAt({x, y})]; there.empty() || there.back() != i)
                    there.push_back(i);
    }
    for (std::size_t i = 0; i < m_shapes.size(); ++i)
        m_at.emplace(m_shapes[i].structure, i);
}

std::size_t Drawing::cellAt(Point drawn) const
{
    constexpr auto columns = static_cast<std::size_t>(1000 / cell) + 1;
    const auto column = static_cast<std::size_t>(std::clamp((drawn.x + 500) / cell, 0.0, columns - 1.0));
    const auto row = static_cast<std::size_t>(std::clamp(drawn.y / cell, 0.0, columns - 1.0));
    return row * columns + column;
}

std::vector<std::size_t> Drawing::shapesOf(const StructureId &id) const
{
    std::vector<std::size_t> shapes;
    const auto [first, last] = m_at.equal_range(id);
    for (auto it = first; it != last; ++it)
        shapes.push_back(it->second);
    return shapes;
}

Side Drawing::sideAt(double x, Side facing) const
{
    if (isWhole(m_view))
        return facing;
    const bool drawnHalf = x >= 0;
    return (m_view == View::Back) == drawnHalf ? Side::Right : Side::Left;
}

int Drawing::signOf(Side side) const
{
    if (side == Side::Midline)
        return 1;
    if (isWhole(m_view))
        return side == Side::Right ? 1 : -1;
    return (m_view == View::Back) == (side == Side::Right) ? 1 : -1;
}

Point Drawing::drawnPoint(Point p, Side facing) const
{
    if (isWhole(m_view))
        return {facing == Side::Left ? -p.x : p.x, p.y};
    return {std::abs(p.x), p.y};
}

std::vector<UnderHit> Drawing::under(const Atlas &atlas, Point p, Side facing) const
{
    const Side side = sideAt(p.x, facing);
    const Point drawn = drawnPoint(p, facing);
    std::vector<UnderHit> hits;
    for (const std::size_t index : m_cells[cellAt(drawn)]) {
        const DrawnShape &shape = m_shapes[index];
        if (!shape.bounds.contains(drawn) || !contains(shape.polygons, drawn))
            continue;
        const Structure &structure = atlas.at(shape.structure);
        const bool segment = atlas.isSpinalSegment(structure.id);
        const bool midline = segment ? isWhole(m_view) || drawn.x <= midlineHalfWidth : !structure.paired;
        UnderHit hit{{structure.id, midline ? Side::Midline : side}, shape.layer};
        if (std::find(hits.begin(), hits.end(), hit) == hits.end())
            hits.push_back(std::move(hit));
    }
    return hits;
}

std::vector<Overlap> Drawing::overlaps(const Atlas &atlas, double minShare) const
{
    constexpr double step = 3; // units between sample points; about 5 mm
    const auto softTissue = [&](const DrawnShape &shape) {
        switch (atlas.at(shape.structure).kind) {
        case Kind::SurfaceRegion:
        case Kind::SuperficialFascia:
        case Kind::Fascia:
        case Kind::Ligament:
        case Kind::Tendon:
        case Kind::Muscle: return true;
        default: return false;
        }
    };
    std::map<StructureId, int> size;
    std::map<std::pair<StructureId, StructureId>, int> shared;
    std::vector<const StructureId *> above(static_cast<std::size_t>(1000 / step) + 1); // of each sample of the row, so far
    for (double y = step / 2; y < 1000; y += step) {
        std::fill(above.begin(), above.end(), nullptr);
        for (auto shape = m_shapes.rbegin(); shape != m_shapes.rend(); ++shape) { // outside in
            if (y < shape->bounds.top || y > shape->bounds.bottom || !softTissue(*shape))
                continue;
            for (const Interval &inside : rowOf(shape->polygons, y)) {
                const auto first = static_cast<std::size_t>(std::max(std::ceil((inside.from + 500) / step - 0.5), 0.0));
                for (std::size_t i = first; i < above.size() && (static_cast<double>(i) + 0.5) * step - 500 < inside.to; ++i) {
                    ++size[shape->structure];
                    if (above[i] && *above[i] != shape->structure)
                        ++shared[{*above[i], shape->structure}];
                    above[i] = &shape->structure;
                }
            }
        }
    }
    std::vector<Overlap> out;
    for (const auto &[pair, count] : shared) {
        const double share = static_cast<double>(count) / std::min(size[pair.first], size[pair.second]);
        if (share >= minShare)
            out.push_back({pair.first, pair.second, share});
    }
    return out;
}

Result<Body> readEmbeddedBody(const Atlas &atlas)
{
    const auto files = embeddedFiles("drawing");
    if (!files)
        return files.error();
    const auto read = [&](const std::string &name, View view) -> Result<Drawing> {
        for (const NamedText &file : files.value())
            if (file.name == name)
                return readDrawing(file.text, name, view, atlas);
        return Error{ErrorCode::CannotRead, name, "not built in"};
    };
    std::vector<Drawing> drawings;
    for (const auto &[view, word] : viewWords) {
        auto drawing = read(std::string(word) + ".svg", view);
        if (!drawing)
            return drawing.error();
        drawings.push_back(std::move(drawing).value());
    }
    return Body(std::move(drawings));
}

} // namespace raphe
