// Drawings: any bytes give a drawing or an error with a place. A drawing that was accepted keeps the rules; what lies
// under a point comes outside in and is the mirror image of what lies under the mirrored point; marks stand on their side.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/fuzz/Expect.h"

#include "core/anatomy/Drawing.h"
#include "core/anatomy/MarkPoint.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace {

using namespace raphe;
using fuzz::expect;

bool isOnTheHalf(Point p)
{
    return p.x >= 0 && p.x <= 2000 && std::abs(p.y) <= 2000;
}

void expectRules(const Outline &outline, bool closed, const std::string &id)
{
    expect(!outline.empty(), "an outline is drawn", id);
    for (const Contour &contour : outline) {
        expect(contour.closed == closed, "shapes are closed, strokes open", id);
        expect(isOnTheHalf(contour.start), "only x >= 0 is drawn", id);
        for (const Cubic &c : contour.segments)
            expect(isOnTheHalf(c.control1) && isOnTheHalf(c.control2) && isOnTheHalf(c.end), "only x >= 0 is drawn", id);
    }
}

void expectMirrored(const Drawing &drawing, const Atlas &atlas, Point p)
{
    const auto hits = drawing.under(atlas, p);
    expect(std::is_sorted(hits.begin(), hits.end(), [](const UnderHit &a, const UnderHit &b) { return a.layer < b.layer; }),
        "outside in");
    auto mirror = drawing.under(atlas, {-p.x, p.y});
    for (UnderHit &hit : mirror)
        hit.place = mirrored(hit.place);
    expect(p.x == 0 || hits == mirror, "left mirrors right");
    for (const UnderHit &hit : hits) {
        const auto sides = atlas.sides(atlas.at(hit.place.structure));
        expect(std::find(sides.begin(), sides.end(), hit.place.side) != sides.end(), "a place that can be recorded",
            hit.place.structure.value);
    }
}

void expectMark(const Drawing &drawing, const Atlas &atlas, const Structure &structure)
{
    for (const Side side : atlas.sides(structure))
        for (const auto spot : {std::optional<Spot>(), std::optional(Spot::Origin), std::optional(Spot::Insertion)}) {
            const auto mark = markPointIn(atlas, drawing, {structure.id, side}, spot);
            expect(mark.has_value(), "what is drawn can be marked", structure.id.value);
            expect(isOnTheHalf({std::abs(mark->x), mark->y}), "a mark is on the drawing", structure.id.value);
            expect(side == Side::Midline ? mark->x == 0 : mark->x == 0 || drawing.sideAt(mark->x) == side,
                "a mark is on its side", structure.id.value);
        }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    static const Atlas atlas = raphe::test::tinyAtlas();
    const std::string text(data, data + size);
    if (const auto whole = readDrawing(text, "input.svg", View::Side, atlas)) // x may be negative there
        for (const Side facing : {Side::Left, Side::Right})
            for (const UnderHit &hit : whole.value().under(atlas, {12, 345}, facing))
                expect(hit.place.side == facing || hit.place.side == Side::Midline, "a side view gives its own side", "side");
    for (const View view : {View::Front, View::Back}) {
        const auto read = readDrawing(text, "input.svg", view, atlas);
        if (!read) {
            expect(!read.error().place.empty(), "an error has a place", read.error().detail);
            return 0;
        }
        const Drawing &drawing = read.value();
        expectRules(drawing.silhouette(), false, "body-outline");
        for (const DrawnShape &shape : drawing.shapes()) {
            expect(atlas.find(shape.structure) != nullptr, "a shape is of something known", shape.structure.value);
            expectRules(shape.outline, true, shape.structure.value);
            for (const Outline &fibre : shape.fibres)
                expectRules(fibre, false, shape.structure.value);
            expect(std::isfinite(areaOf(shape.polygons)), "an area is a number", shape.structure.value);
            const Box box = shape.bounds;
            if (size < 2000) // many corners make it slow without showing more
                expectMark(drawing, atlas, atlas.at(shape.structure));
            expectMirrored(drawing, atlas, {(box.left + box.right) / 2, (box.top + box.bottom) / 2});
        }
        expectMirrored(drawing, atlas, {50, 500});
        expectMirrored(drawing, atlas, {2, 400});
        expectMirrored(drawing, atlas, {0, 450});
    }
    return 0;
}
