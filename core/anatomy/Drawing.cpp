#include "core/anatomy/Drawing.h"

#include "core/anatomy/Atlas.h"
#include "core/anatomy/AtlasReader.h"

#include <algorithm>
#include <map>

namespace raphe {

Drawing::Drawing(View view, Outline silhouette, std::vector<DrawnShape> shapes)
    : m_view(view), m_silhouette(std::move(silhouette)), m_shapes(std::move(shapes))
{
    std::stable_sort(
        m_shapes.begin(), m_shapes.end(), [](const DrawnShape &a, const DrawnShape &b) { return a.layer > b.layer; });
    for (DrawnShape &shape : m_shapes) {
        shape.polygons = flattened(shape.outline);
        shape.bounds = boundsOf(shape.polygons);
    }
}

Side Drawing::sideAt(double x) const
{
    const bool drawnHalf = x >= 0;
    return (m_view == View::Back) == drawnHalf ? Side::Right : Side::Left;
}

int Drawing::signOf(Side side) const
{
    if (side == Side::Midline)
        return 1;
    return (m_view == View::Back) == (side == Side::Right) ? 1 : -1;
}

std::vector<UnderHit> Drawing::under(const Atlas &atlas, Point p) const
{
    const Side side = sideAt(p.x);
    const Point folded{std::abs(p.x), p.y};
    std::vector<UnderHit> hits;
    for (auto it = m_shapes.rbegin(); it != m_shapes.rend(); ++it) {
        if (!it->bounds.contains(folded) || !contains(it->polygons, folded))
            continue;
        const Structure &structure = atlas.at(it->structure);
        const bool midline = atlas.isSpinalSegment(structure.id) ? folded.x <= midlineHalfWidth : !structure.paired;
        UnderHit hit{{structure.id, midline ? Side::Midline : side}, it->layer};
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
    for (double y = step / 2; y < 1000; y += step) {
        for (double x = step / 2; x < 500; x += step) {
            const StructureId *above = nullptr;
            for (auto it = m_shapes.rbegin(); it != m_shapes.rend(); ++it) {
                if (!it->bounds.contains({x, y}) || !softTissue(*it) || !contains(it->polygons, {x, y}))
                    continue;
                ++size[it->structure];
                if (above && *above != it->structure)
                    ++shared[{*above, it->structure}];
                above = &it->structure;
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
    auto front = read("front.svg", View::Front);
    if (!front)
        return front.error();
    auto back = read("back.svg", View::Back);
    if (!back)
        return back.error();
    return Body{std::move(front).value(), std::move(back).value()};
}

} // namespace raphe
