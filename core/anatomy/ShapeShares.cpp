#include "core/anatomy/ShapeShares.h"

#include "core/anatomy/Atlas.h"

#include <algorithm>

namespace raphe {

namespace {

using Shapes = std::vector<const DrawnShape *>; // the pieces of one structure in one view

Shapes shapesOf(const Drawing &drawing, const std::vector<StructureId> &ids)
{
    Shapes shapes;
    for (const StructureId &id : ids)
        for (const std::size_t index : drawing.shapesOf(id))
            shapes.push_back(&drawing.shapes()[index]);
    return shapes;
}

// In square units of the body, whatever the scale of the view.
double areaIn(const Drawing &drawing, const Shapes &shapes)
{
    double area = 0;
    for (const DrawnShape *shape : shapes)
        area += areaOf(shape->polygons);
    return area / (drawing.scale() * drawing.scale());
}

bool isOnPage(const Body &body, const std::vector<StructureId> &drawn)
{
    return !shapesOf(body.of(View::Front), drawn).empty() || !shapesOf(body.of(View::Back), drawn).empty();
}

// Front or back first, as for the mark of a place: side and head look through the whole width of the body, where what is deep
// comes to lie under the skin of the flank. What both show nearly alike is deep, the spine above all, and is reached from behind.
const Drawing *mainView(const Body &body, const std::vector<StructureId> &drawn)
{
    constexpr double clearlyMore = 1.25; // our choice: the vertebrae differ less, a rib more
    const double front = areaIn(body.of(View::Front), shapesOf(body.of(View::Front), drawn));
    const double back = areaIn(body.of(View::Back), shapesOf(body.of(View::Back), drawn));
    if (front > 0 || back > 0)
        return &body.of(front > clearlyMore * back ? View::Front : View::Back);
    const Drawing *best = nullptr;
    double most = 0;
    for (const View view : {View::Side, View::Sole, View::Palm, View::Head})
        if (const double area = areaIn(body.of(view), shapesOf(body.of(view), drawn)); area > most) {
            most = area;
            best = &body.of(view);
        }
    return best;
}

// Where a line runs inside any of the shapes: stretches from left to right, apart from one another.
std::vector<Interval> rowOf(const Shapes &shapes, double y)
{
    std::vector<Interval> row;
    for (const DrawnShape *shape : shapes)
        if (y >= shape->bounds.top && y <= shape->bounds.bottom)
            for (const Interval &inside : rowOf(shape->polygons, y))
                row.push_back(inside);
    std::sort(row.begin(), row.end(), [](const Interval &a, const Interval &b) { return a.from < b.from; });
    std::vector<Interval> joined;
    for (const Interval &inside : row)
        if (joined.empty() || inside.from > joined.back().to)
            joined.push_back(inside);
        else
            joined.back().to = std::max(joined.back().to, inside.to);
    return joined;
}

double lengthOf(const std::vector<Interval> &row)
{
    double length = 0;
    for (const Interval &inside : row)
        length += inside.to - inside.from;
    return length;
}

double sharedLength(const std::vector<Interval> &a, const std::vector<Interval> &b)
{
    double length = 0;
    for (const Interval &one : a)
        for (const Interval &other : b)
            length += std::max(0.0, std::min(one.to, other.to) - std::max(one.from, other.from));
    return length;
}

Box boundsOf(const Shapes &shapes)
{
    Box box = shapes.front()->bounds;
    for (const DrawnShape *shape : shapes) {
        box.left = std::min(box.left, shape->bounds.left);
        box.top = std::min(box.top, shape->bounds.top);
        box.right = std::max(box.right, shape->bounds.right);
        box.bottom = std::max(box.bottom, shape->bounds.bottom);
    }
    return box;
}

bool meet(const Box &a, const Box &b)
{
    return a.left < b.right && a.right > b.left && a.top < b.bottom && a.bottom > b.top;
}

std::map<StructureId, Shapes> skinOver(const Drawing &drawing, const Box &box)
{
    std::map<StructureId, Shapes> regions;
    for (const DrawnShape &shape : drawing.shapes())
        if (shape.layer == Layer::Skin && meet(shape.bounds, box))
            regions[shape.structure].push_back(&shape);
    return regions;
}

// Of each of the others, the share of `shapes` that lies within it, from rows across `shapes`.
std::map<StructureId, double> sharesWithin(const Shapes &shapes, const std::map<StructureId, Shapes> &others)
{
    constexpr int rows = 32; // our choice: enough for shares that are held against 0.3 and 0.5
    const Box box = boundsOf(shapes);
    double size = 0;
    std::map<StructureId, double> shares;
    for (int i = 0; i < rows; ++i) {
        const double y = box.top + (box.bottom - box.top) * (i + 0.5) / rows;
        const std::vector<Interval> row = rowOf(shapes, y);
        size += lengthOf(row);
        for (const auto &[id, other] : others)
            if (const double length = sharedLength(row, rowOf(other, y)); length > 0)
                shares[id] += length;
    }
    for (auto &[id, share] : shares)
        share /= size; // not 0: there is a share
    return shares;
}

} // namespace

std::vector<StructureId> drawnFor(const Atlas &atlas, const Body &body, const StructureId &id)
{
    const auto isDrawn = [&](const StructureId &s) {
        return std::any_of(
            body.drawings().begin(), body.drawings().end(), [&](const Drawing &drawing) { return drawing.shows(s); });
    };
    if (isDrawn(id))
        return {id};
    std::vector<StructureId> parts;
    for (const StructureId &part : atlas.partsOf(id))
        if (isDrawn(part))
            parts.push_back(part);
    if (parts.empty())
        if (const auto &whole = atlas.at(id).partOf)
            return drawnFor(atlas, body, *whole);
    return parts;
}

std::map<StructureId, double> regionsOver(const Body &body, const std::vector<StructureId> &drawn)
{
    const Drawing *main = mainView(body, drawn);
    std::map<StructureId, double> shares;
    for (const Drawing *drawing : {main, &body.of(View::Sole), &body.of(View::Palm)}) {
        if (!drawing)
            continue;
        const Shapes shapes = shapesOf(*drawing, drawn);
        if (shapes.empty())
            continue;
        for (const auto &[region, share] : sharesWithin(shapes, skinOver(*drawing, boundsOf(shapes))))
            shares[region] = std::max(shares[region], share);
    }
    return shares;
}

double shareOn(const Body &body, const std::vector<StructureId> &first, const std::vector<StructureId> &second)
{
    const bool bothOnPage = isOnPage(body, first) && isOnPage(body, second);
    double most = 0;
    for (const Drawing &drawing : body.drawings()) {
        if (bothOnPage && isWhole(drawing.view()))
            continue;
        const Shapes one = shapesOf(drawing, first);
        const Shapes other = shapesOf(drawing, second);
        if (one.empty() || other.empty() || !meet(boundsOf(one), boundsOf(other)))
            continue;
        for (const auto &[id, share] : sharesWithin(one, {{StructureId{}, other}}))
            most = std::max(most, share);
    }
    return most;
}

} // namespace raphe
