// Brush strokes as cells of a SurfaceMask. Exact: a cell is marked when its middle lies within the radius of the stroke's line,
// and a mirrored stroke marks the mirrored cells. Plain functions of plain values; nothing fails, any thread.
#pragma once

#include "core/anatomy/BrushStroke.h"
#include "core/anatomy/SurfaceMask.h"

namespace raphe {

class Body;

/// The cells whose middle lies inside the silhouettes of front and back.
[[nodiscard]] SurfaceMask silhouetteMask(const Body &body);

/// Marks what the stroke covers on front or back, whether there is body or not; on the other views nothing. Points may lie
/// outside the view; all numbers must be finite. Time grows with points times radius, and with the height of the line.
void paintStroke(SurfaceMask &mask, View view, const BrushStroke &stroke);

} // namespace raphe
