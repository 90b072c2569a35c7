#include "core/anatomy/MarkPoint.h"

#include "core/anatomy/Atlas.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace raphe {

namespace {

const DrawnShape *largestShape(const Drawing &drawing, const StructureId &id)
{
    const DrawnShape *best = nullptr;
    for (const std::size_t index : drawing.shapesOf(id)) {
        const DrawnShape &shape = drawing.shapes()[index];
        if (!best || areaOf(shape.polygons) > areaOf(best->polygons))
            best = &shape;
    }
    return best;
}

// Centre of gravity of the filled shape, from sample points.
Point centroidOf(const DrawnShape &shape, double step)
{
    Point sum;
    int count = 0;
    for (double y = shape.bounds.top + step / 2; y < shape.bounds.bottom; y += step)
        for (double x = shape.bounds.left + step / 2; x < shape.bounds.right; x += step)
            if (contains(shape.polygons, {x, y})) {
                sum.x += x;
                sum.y += y;
                ++count;
            }
    return count > 0 ? Point{sum.x / count, sum.y / count}
                     : Point{(shape.bounds.left + shape.bounds.right) / 2, (shape.bounds.top + shape.bounds.bottom) / 2};
}

// The inner point nearest to the target (the centre of gravity when there is none), not quite at the edge.
Point innerPoint(const DrawnShape &shape, std::optional<Point> target)
{
    const Box &b = shape.bounds;
    const double step = std::max({(b.right - b.left) / 24, (b.bottom - b.top) / 24, 0.25});
    const Point aim = target.value_or(centroidOf(shape, step));
    Point best = aim;
    double bestScore = -std::numeric_limits<double>::infinity();
    for (double y = b.top + step / 2; y < b.bottom; y += step)
        for (double x = b.left + step / 2; x < b.right; x += step) {
            if (!contains(shape.polygons, {x, y}))
                continue;
            const double depth = distanceToEdge(shape.polygons, {x, y});
            const double score = std::min(depth, 3.0) - std::hypot(x - aim.x, y - aim.y);
            if (score > bestScore) {
                bestScore = score;
                best = {x, y};
            }
        }
    return best;
}

std::optional<Point> landmarkOf(const Atlas &atlas, const Drawing &drawing, const Structure &structure, std::optional<Spot> spot,
    const std::optional<StructureId> &at)
{
    std::vector<StructureId> wanted;
    if (at)
        wanted.push_back(*at);
    else
        for (const Attachment &head : structure.attachments) {
            if (spot == Spot::Origin)
                wanted.insert(wanted.end(), head.origins.begin(), head.origins.end());
            if (spot == Spot::Insertion)
                wanted.insert(wanted.end(), head.insertions.begin(), head.insertions.end());
        }
    for (const StructureId &id : wanted)
        if (const DrawnShape *shape = largestShape(drawing, id); shape && atlas.at(id).kind == Kind::Landmark)
            return innerPoint(*shape, {});
    return std::nullopt;
}

} // namespace

std::optional<Point> markPointIn(const Atlas &atlas, const Drawing &drawing, const Place &place, std::optional<Spot> spot,
    const std::optional<StructureId> &at)
{
    const DrawnShape *shape = largestShape(drawing, place.structure);
    if (!shape)
        return std::nullopt;
    Point p = innerPoint(*shape, landmarkOf(atlas, drawing, atlas.at(place.structure), spot, at));
    if (place.side == Side::Midline && !isWhole(drawing.view()))
        p.x = 0;
    p.x *= drawing.signOf(place.side);
    return p;
}

namespace {

// Drawn itself; or a whole whose largest drawn part stands for it; or a hidden thing shown by what it is part of.
std::optional<DrawnPoint> markPointAmong(const std::vector<View> &views, const Atlas &atlas, const Body &body, const Place &place,
    std::optional<Spot> spot, const std::optional<StructureId> &at)
{
    struct Candidate {
        StructureId structure;
        View view{};
        double area = 0;
    };
    std::optional<Candidate> best;
    const auto consider = [&](const StructureId &id) {
        for (const View view : views)
            if (const DrawnShape *shape = largestShape(body.of(view), id)) {
                const double scale = body.of(view).scale();
                if (const double area = areaOf(shape->polygons) / (scale * scale); !best || area > best->area)
                    best = Candidate{id, view, area};
            }
    };
    const Structure &structure = atlas.at(place.structure);
    consider(structure.id);
    if (!best)
        for (const StructureId &part : atlas.partsOf(structure.id))
            consider(part);
    if (!best && structure.partOf)
        consider(*structure.partOf);
    if (!best)
        return std::nullopt;
    return DrawnPoint{best->view, *markPointIn(atlas, body.of(best->view), {best->structure, place.side}, spot, at)};
}

} // namespace

std::optional<DrawnPoint> markPointOnPage(
    const Atlas &atlas, const Body &body, const Place &place, std::optional<Spot> spot, const std::optional<StructureId> &at)
{
    return markPointAmong({View::Back, View::Front}, atlas, body, place, spot, at);
}

std::optional<DrawnPoint> markPoint(
    const Atlas &atlas, const Body &body, const Place &place, std::optional<Spot> spot, const std::optional<StructureId> &at)
{
    // The structure itself in some view tells more than what stands for it in front or back.
    const bool onPage = body.of(View::Front).shows(place.structure) || body.of(View::Back).shows(place.structure);
    const std::vector<View> others{View::Side, View::Sole, View::Palm, View::Head};
    if (!onPage)
        for (const View view : others)
            if (body.of(view).shows(place.structure))
                return markPointAmong(others, atlas, body, place, spot, at);
    if (const auto page = markPointOnPage(atlas, body, place, spot, at))
        return page;
    return markPointAmong(others, atlas, body, place, spot, at);
}

} // namespace raphe
