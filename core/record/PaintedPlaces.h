// Where on the skin a patch of the pain drawing lies, in places: what is said back to the patient in words, with the side.
// Plain functions of plain values; nothing fails, any thread.
#pragma once

#include "core/anatomy/Drawing.h"
#include "core/record/PainDrawing.h"

#include <optional>
#include <vector>

namespace raphe {

class Atlas;

/// The surface region at a point of a view; nothing beside the body.
[[nodiscard]] std::optional<Place> skinAt(const Drawing &drawing, const Atlas &atlas, Point p, Side facing);

struct PaintedPlace {
    Place place; // a surface region
    double share = 0; // of what the patch covers of the body, 0 to 1
    bool operator==(const PaintedPlace &) const = default;
};

/// Regions with a smaller share are left out: the brush grazed them on its way. Our choice.
inline constexpr double leastPaintedShare = 0.1;

/// The surface regions that the patch covers, most first; equal ones by id, then left before right. `drawing` is that of the
/// patch's view. What lies beside the body counts for nothing, so a patch that lies there altogether has no places. The mirrored
/// patch has the mirrored places with the very same shares.
///
/// Counted on a grid of points, 2 units apart (some 3 mm of a body): whatever the strokes do, each spot of skin counts once, and
/// a dot of a usual brush (radius 12) meets about a hundred points. They are 1 unit apart when a brush of the patch is smaller
/// than 6, so that the smallest dot still meets one. No point lies on x = 0, where the drawing would have to choose a side.
[[nodiscard]] std::vector<PaintedPlace> paintedPlaces(const PainPatch &patch, const Drawing &drawing, const Atlas &atlas);

} // namespace raphe
