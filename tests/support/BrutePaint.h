// Pain drawings by brute force, for tests and benchmarks: the distance of every cell's middle to every piece of every stroke, and
// a point-in-silhouette test of its own (even-odd, upwards). Shares no code with core/anatomy/StrokeRaster but the values.
#pragma once

#include "core/anatomy/Drawing.h"
#include "core/record/PainDrawing.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <random>
#include <vector>

namespace raphe::test {

/// A picture of a view: one flag a cell, row by row from the top, from x = -500.
using Picture = std::vector<bool>;
inline constexpr int pictureWidth = 1000;

inline std::size_t pixelAt(int x, int y)
{
    return static_cast<std::size_t>(y) * pictureWidth + static_cast<std::size_t>(x + 500);
}

/// The chords by which the drawings are measured (12 a cubic), by halving of the control lines.
inline std::vector<Polygon> chordsOf(const Outline &outline)
{
    const auto between = [](Point a, Point b, double t) { return Point{a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t}; };
    std::vector<Polygon> out;
    for (const Contour &contour : outline) {
        Polygon polygon{contour.start};
        for (const Cubic &c : contour.segments) {
            const Point from = polygon.back();
            for (int i = 1; i <= 12; ++i) {
                const double t = i / 12.0;
                const Point a = between(from, c.control1, t);
                const Point b = between(c.control1, c.control2, t);
                const Point d = between(c.control2, c.end, t);
                polygon.push_back(i == 12 ? c.end : between(between(a, b, t), between(b, d, t), t));
            }
        }
        out.push_back(std::move(polygon));
    }
    return out;
}

/// Whether a line from the point straight up leaves the polygons an odd number of times.
inline bool isInside(const std::vector<Polygon> &polygons, Point p)
{
    bool inside = false;
    for (const Polygon &polygon : polygons)
        for (std::size_t i = 0, last = polygon.size() - 1; i < polygon.size(); last = i++) {
            const Point a = polygon[last];
            const Point b = polygon[i];
            if ((a.x > p.x) != (b.x > p.x) && a.y + (p.x - a.x) / (b.x - a.x) * (b.y - a.y) < p.y)
                inside = !inside;
        }
    return inside;
}

/// The cells of the body of one view; the half that is drawn, and its mirror image.
inline Picture bodyPicture(const Drawing &drawing)
{
    Picture picture(static_cast<std::size_t>(pictureWidth) * 1000);
    const auto silhouette = chordsOf(drawing.silhouette());
    for (int y = 0; y < 1000; ++y)
        for (int x = 0; x < 500; ++x)
            picture[pixelAt(x, y)] = picture[pixelAt(-1 - x, y)] = isInside(silhouette, {x + 0.5, y + 0.5});
    return picture;
}

inline double distanceToPiece(Point p, Point a, Point b)
{
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    const double along = length > 0 ? ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length : 0;
    const double t = length > 0 ? std::clamp(along / length, 0.0, 1.0) : 0;
    return std::hypot(p.x - (a.x + t * (b.x - a.x)), p.y - (a.y + t * (b.y - a.y)));
}

inline bool isPainted(const BrushStroke &stroke, Point p)
{
    if (stroke.points.size() == 1)
        return distanceToPiece(p, stroke.points[0], stroke.points[0]) <= stroke.radius;
    for (std::size_t i = 1; i < stroke.points.size(); ++i)
        if (distanceToPiece(p, stroke.points[i - 1], stroke.points[i]) <= stroke.radius)
            return true;
    return false;
}

/// What the patches on one view cover of the body.
inline Picture brutePicture(const std::vector<PainPatch> &pain, View view, const Picture &body)
{
    Picture picture(body.size());
    for (const PainPatch &patch : pain)
        for (const BrushStroke &stroke : patch.strokes)
            for (int y = 0; y < 1000 && patch.view == view; ++y)
                for (int x = -500; x < 500; ++x)
                    if (const std::size_t pixel = pixelAt(x, y); body[pixel] && !picture[pixel])
                        picture[pixel] = isPainted(stroke, {x + 0.5, y + 0.5});
    return picture;
}

/// Drawings as a hand makes them, and worse: lines that wander, dots, lines that lie straight or turn on the spot, whatever
/// view, some of them beside the body. The same for the same seed on every platform.
class RandomDrawings {
public:
    explicit RandomDrawings(unsigned seed) : m_random(seed) { }

    /// At most `points` in each of at most `strokes` of each of one to three patches.
    std::vector<PainPatch> next(int strokes = 3, int points = 8)
    {
        std::vector<PainPatch> pain;
        for (int i = 1 + below(3); i > 0; --i) {
            PainPatch patch;
            patch.view = below(8) == 0 ? viewWords[static_cast<std::size_t>(below(6))].first
                : below(2)             ? View::Front
                                       : View::Back;
            if (isWhole(patch.view))
                patch.facing = below(2) ? Side::Left : Side::Right;
            for (int s = 1 + below(strokes); s > 0; --s)
                patch.strokes.push_back(stroke(points));
            if (below(3))
                patch.quality = painQualityWords[static_cast<std::size_t>(below(painQualityWords.size()))].first;
            if (below(3))
                patch.intensity = PainScore{below(PainScore::highest + 1)};
            patch.painter = below(2) ? Painter::Patient : Painter::Practitioner;
            patch.confirmed = below(2) == 0;
            pain.push_back(std::move(patch));
        }
        return pain;
    }

    int below(std::size_t limit) { return static_cast<int>(m_random() % static_cast<unsigned>(limit)); }
    int below(int limit) { return below(static_cast<std::size_t>(limit)); }
    double between(double low, double high) { return low + (high - low) * (static_cast<double>(m_random()) / 4294967295.0); }

private:
    BrushStroke stroke(int most)
    {
        BrushStroke out;
        out.radius = below(4) ? between(PainLimits::leastRadius, 25) : 1 + below(40);
        Point p = below(4) ? Point{between(-150, 150), between(0, 1000)}
                           : Point{between(viewFrame.left, viewFrame.right), between(viewFrame.top, viewFrame.bottom)};
        const int kind = below(6); // 0: along x, 1: along y, 2: on the grid, others: free
        if (kind == 2)
            p = {std::floor(p.x), std::floor(p.y)};
        for (int i = 1 + below(most); i > 0; --i) {
            out.points.push_back(p);
            const double step = below(5) ? 30 : 200;
            if (below(8)) { // else it stays
                p.x += kind == 1 ? 0 : kind == 2 ? below(61) - 30 : between(-step, step);
                p.y += kind == 0 ? 0 : kind == 2 ? below(61) - 30 : between(-step, step);
            }
            p = {std::clamp(p.x, viewFrame.left, viewFrame.right), std::clamp(p.y, viewFrame.top, viewFrame.bottom)};
        }
        return out;
    }

    std::mt19937 m_random;
};

} // namespace raphe::test
