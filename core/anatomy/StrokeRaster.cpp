// A stroke is a disc at each of its points and a rectangle along each of its pieces. In a row of cells each of these is one run,
// whose ends are estimated in numbers and then settled by the test itself: rounding falls on both sides alike, and the
// mirrored stroke gives the mirrored run to the last cell.
#include "core/anatomy/StrokeRaster.h"

#include "core/anatomy/Drawing.h"

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr double middle = 0.5; // of a cell, from its left or upper edge

// The cell in which a number lies, within a margin of the view around the view.
int cellOf(double at)
{
    return static_cast<int>(std::floor(std::clamp(at, -2000.0, 2000.0)));
}

struct Run {
    int from = 0;
    int to = -1;
};

struct Rows {
    int first = 0;
    int last = -1;
};

// Rows whose middle can be reached from heights between `top` and `bottom`.
Rows rowsBetween(double top, double bottom)
{
    return {std::max(cellOf(top - middle), 0), std::min(cellOf(bottom - middle) + 1, SurfaceMask::rows - 1)};
}

void paintDisc(SurfaceMask &mask, View view, Point centre, double radius)
{
    const Rows rows = rowsBetween(centre.y - radius, centre.y + radius);
    const double radius2 = radius * radius;
    for (int y = rows.first; y <= rows.last; ++y) {
        const double ey = y + middle - centre.y;
        const double left = radius2 - ey * ey;
        if (left < 0)
            continue;
        const double half = std::sqrt(left);
        const auto holds = [&](int x) {
            const double ex = x + middle - centre.x;
            return ex * ex + ey * ey <= radius2;
        };
        Run run{cellOf(centre.x - half - middle) - 1, cellOf(centre.x + half - middle) + 2};
        while (run.from <= run.to && !holds(run.from))
            ++run.from;
        while (run.from <= run.to && !holds(run.to))
            --run.to;
        mask.markRun(view, y, run.from, run.to);
    }
}

// Narrows the run to the cells x with (x + middle - origin) * slope >= bound. The left side never falls along the run where
// slope > 0, nor rises where slope < 0, rounding included: so the end can be sought from an estimate, in doubling steps.
void narrow(Run &run, double origin, double slope, double bound)
{
    if (run.from > run.to)
        return;
    const auto holds = [&](int x) { return (x + middle - origin) * slope >= bound; };
    if (slope == 0) {
        if (!holds(run.from))
            run.to = run.from - 1;
        return;
    }
    const int inward = slope > 0 ? 1 : -1; // from cells that do not hold to those that do
    const int outer = slope > 0 ? run.from : run.to;
    const int inner = slope > 0 ? run.to : run.from;
    const auto clamped = [&](int x) { return std::clamp(x, run.from, run.to); };
    int good = clamped(cellOf(origin + bound / slope - middle));
    for (int step = 1; !holds(good); step *= 2) {
        if (good == inner) { // none holds
            run.to = run.from - 1;
            return;
        }
        good = clamped(good + inward * step);
    }
    int bad = good; // or the outermost cell, which may hold too
    for (int step = 1; bad != outer && holds(bad); step *= 2) {
        good = bad;
        bad = clamped(bad - inward * step);
    }
    if (holds(bad))
        good = bad;
    while (std::abs(good - bad) > 1) {
        const int between = (good + bad) / 2;
        (holds(between) ? good : bad) = between;
    }
    (slope > 0 ? run.from : run.to) = good;
}

// What lies beside the piece from a to b, between its ends, not farther than the radius.
void paintPiece(SurfaceMask &mask, View view, Point a, Point b, double radius)
{
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double length2 = dx * dx + dy * dy;
    if (!(length2 > 0))
        return;
    const double reach = radius * std::sqrt(length2);
    const Rows rows = rowsBetween(std::min(a.y, b.y) - radius, std::max(a.y, b.y) + radius);
    const Run whole{std::max(cellOf(std::min(a.x, b.x) - radius) - 1, SurfaceMask::firstX),
        std::min(cellOf(std::max(a.x, b.x) + radius) + 1, SurfaceMask::lastX)};
    for (int y = rows.first; y <= rows.last; ++y) {
        const double ey = y + middle - a.y;
        Run run = whole;
        narrow(run, a.x, dx, -ey * dy); // not before a: ex dx + ey dy >= 0
        narrow(run, a.x, -dx, ey * dy - length2); // nor behind b
        narrow(run, a.x, dy, ey * dx - reach); // not too far to the one side: ey dx - ex dy <= reach
        narrow(run, a.x, -dy, -ey * dx - reach); // nor to the other
        mask.markRun(view, y, run.from, run.to);
    }
}

} // namespace

SurfaceMask silhouetteMask(const Body &body)
{
    SurfaceMask mask;
    for (const View view : {View::Front, View::Back}) {
        const auto polygons = flattened(body.of(view).silhouette());
        for (int y = 0; y < SurfaceMask::rows; ++y)
            for (const Interval &inside : rowOf(polygons, y + middle)) {
                const int from = std::max(static_cast<int>(std::ceil(inside.from - middle)), 0);
                const int to = static_cast<int>(std::ceil(inside.to - middle)) - 1;
                mask.markRun(view, y, from, to);
                mask.markRun(view, y, -1 - to, -1 - from);
            }
    }
    return mask;
}

void paintStroke(SurfaceMask &mask, View view, const BrushStroke &stroke)
{
    if (!SurfaceMask::shows(view))
        return;
    for (std::size_t i = 0; i < stroke.points.size(); ++i) {
        paintDisc(mask, view, stroke.points[i], stroke.radius);
        if (i > 0)
            paintPiece(mask, view, stroke.points[i - 1], stroke.points[i], stroke.radius);
    }
}

} // namespace raphe
