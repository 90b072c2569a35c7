// The body drawing of one view. Immutable after reading; thread-safe.
// Front, back, sole and palm are drawn as the half x >= 0 and mirrored by query. Back view: x > 0 is the patient's right;
// front, sole and palm: the patient's left. Side and head are drawn whole, as the patient's right side with +x forward;
// facing left they are mirrored: x grows backward.
#pragma once

#include "core/anatomy/Outline.h"
#include "core/anatomy/Structure.h"
#include "core/base/Result.h"

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <utility>
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
    /// Scale: units of an inset in one unit of the body (1/1000 of stature); 1 for the body's own views.
    Drawing(View view, Outline silhouette, std::vector<DrawnShape> shapes, double scale = 1);

    [[nodiscard]] View view() const { return m_view; }
    [[nodiscard]] double scale() const { return m_scale; }
    /// Half a body: open path from the crown to the crotch, closed along x = 0 for filling. Whole views and insets: a path
    /// that comes back to its start.
    [[nodiscard]] const Outline &silhouette() const { return m_silhouette; }
    /// Of the silhouette as it is shown, both halves.
    [[nodiscard]] const Box &frame() const { return m_frame; }
    /// Deepest layer first; within a layer the later shape lies on top.
    [[nodiscard]] const std::vector<DrawnShape> &shapes() const { return m_shapes; }
    /// What lies under a point of the view, outside in. Spinal segments within `midlineHalfWidth` of x = 0 are midline; in a
    /// whole view they always are. Facing: which side of the patient a whole view shows.
    [[nodiscard]] std::vector<UnderHit> under(const Atlas &atlas, Point p, Side facing = Side::Right) const;
    /// Which side of the patient a point of this view is on.
    [[nodiscard]] Side sideAt(double x, Side facing = Side::Right) const;
    /// +1 when the place is drawn as it stands in the file, -1 when it is mirrored.
    [[nodiscard]] int signOf(Side side) const;
    /// Where the half or the side that was drawn has this point of the view.
    [[nodiscard]] Point drawnPoint(Point p, Side facing = Side::Right) const;
    [[nodiscard]] bool shows(const StructureId &id) const { return m_at.contains(id); }
    /// Shapes of a structure, indices into shapes().
    [[nodiscard]] std::vector<std::size_t> shapesOf(const StructureId &id) const;
    /// Pairs of soft-tissue shapes that lie directly on one another over at least `minShare` of the smaller.
    [[nodiscard]] std::vector<Overlap> overlaps(const Atlas &atlas, double minShare) const;

    static constexpr double midlineHalfWidth = 4; // units: about 7 mm at 1.74 m; our choice

private:
    // A cell of the plane and the shapes whose bounds meet it, topmost first: so that a point asks few of them.
    static constexpr double cell = 20;
    [[nodiscard]] std::size_t cellAt(Point drawn) const;

    View m_view;
    double m_scale;
    Outline m_silhouette;
    Box m_frame;
    std::vector<DrawnShape> m_shapes;
    std::multimap<StructureId, std::size_t> m_at;
    std::vector<std::vector<std::size_t>> m_cells;
};

/// Reads a drawing strictly: anything outside the design's rules is an error with file, id and position.
[[nodiscard]] Result<Drawing> readDrawing(std::string_view svg, const std::string &file, View view, const Atlas &atlas);

/// All views, one drawing each.
class Body {
public:
    /// In the order of the views' words.
    explicit Body(std::vector<Drawing> drawings) : m_drawings(std::move(drawings)) { }
    [[nodiscard]] const Drawing &of(View view) const { return m_drawings[static_cast<std::size_t>(view)]; }
    [[nodiscard]] const std::vector<Drawing> &drawings() const { return m_drawings; }

private:
    std::vector<Drawing> m_drawings;
};

/// The drawings that are built into the program (resources/drawing).
[[nodiscard]] Result<Body> readEmbeddedBody(const Atlas &atlas);

} // namespace raphe
