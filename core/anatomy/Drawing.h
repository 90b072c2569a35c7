// The body drawing of one view: half the body (x >= 0), mirrored by query. Immutable after reading; thread-safe.
// Back view: x > 0 is the patient's right. Front view: x > 0 is the patient's left.
#pragma once

#include "core/anatomy/Outline.h"
#include "core/anatomy/Structure.h"
#include "core/base/Result.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

class Atlas;

struct DrawnShape {
    StructureId structure;
    Layer layer{};
    Outline outline;
    std::vector<Outline> fibres; // open strokes
    std::vector<Polygon> polygons;
    Box bounds;
};

struct UnderHit {
    Place place;
    Layer layer{};
    bool operator==(const UnderHit &) const = default;
};

/// One shape directly on another: `outer` covers `share` (0 to 1) of the smaller of the two.
struct Overlap {
    StructureId outer;
    StructureId inner;
    double share = 0;
};

class Drawing {
public:
    Drawing(View view, Outline silhouette, std::vector<DrawnShape> shapes);

    [[nodiscard]] View view() const { return m_view; }
    /// Open path from the crown to the crotch; closed along x = 0 for filling.
    [[nodiscard]] const Outline &silhouette() const { return m_silhouette; }
    /// Deepest layer first; within a layer the later shape lies on top.
    [[nodiscard]] const std::vector<DrawnShape> &shapes() const { return m_shapes; }
    /// What lies under a point of the view, outside in. Spinal segments within `midlineHalfWidth` of x = 0 are midline.
    [[nodiscard]] std::vector<UnderHit> under(const Atlas &atlas, Point p) const;
    /// Which side of the patient a point of this view is on.
    [[nodiscard]] Side sideAt(double x) const;
    /// +1 when the place is drawn at x > 0, -1 when mirrored to x < 0.
    [[nodiscard]] int signOf(Side side) const;
    /// Pairs of soft-tissue shapes that lie directly on one another over at least `minShare` of the smaller.
    [[nodiscard]] std::vector<Overlap> overlaps(const Atlas &atlas, double minShare) const;

    static constexpr double midlineHalfWidth = 4; // units: about 7 mm at 1.74 m; our choice

private:
    View m_view;
    Outline m_silhouette;
    std::vector<DrawnShape> m_shapes;
};

/// Reads a drawing strictly: anything outside the design's rules is an error with file, id and position.
[[nodiscard]] Result<Drawing> readDrawing(std::string_view svg, const std::string &file, View view, const Atlas &atlas);

struct Body {
    Drawing front;
    Drawing back;
    [[nodiscard]] const Drawing &of(View view) const { return view == View::Front ? front : back; }
};

/// The drawings that are built into the program (resources/drawing).
[[nodiscard]] Result<Body> readEmbeddedBody(const Atlas &atlas);

} // namespace raphe
