// How a patch of the pain drawing looks: what the brush covered, filled with a pattern that says what the pain feels like, an
// edge, and a plate with the intensity. The patterns are drawn here; the colour is the same for all, so that nothing depends on
// it. Plain functions; any GUI thread.
#pragma once

#include "app/paint/Theme.h"
#include "core/record/PainDrawing.h"

#include <QImage>
#include <QRectF>
#include <QTransform>

#include <optional>

class QPainter;

namespace raphe {

/// A square that can be laid side by side: tinted ground and the pattern of a quality, or the ground alone before it was said.
/// `ratio`: pixels of the picture in one of the screen's.
[[nodiscard]] QImage painPattern(const Theme &theme, std::optional<PainQuality> quality, double ratio);
/// Edge of the square, in pixels of the screen.
inline constexpr int painPatternSize = 18;

/// Paints what lies within `seen`. `toPixels` takes units of the view to the painter's, without turning them; the current patch
/// has a strong edge of two lines.
void paintPainPatch(QPainter &painter, const Theme &theme, const PainPatch &patch, bool isCurrent, const QTransform &toPixels,
    const QRectF &seen);
/// What `paintPainPatch` may touch, in the painter's units.
[[nodiscard]] QRectF painPatchBounds(const std::vector<BrushStroke> &strokes, const QTransform &toPixels);

/// The intensity stands on a plate above the highest point of the patch, and within `room`.
[[nodiscard]] QRectF painPlate(const PainPatch &patch, const QTransform &toPixels, const QRectF &room);
void paintPainPlate(QPainter &painter, const Theme &theme, PainScore intensity, bool isCurrent, const QRectF &plate);

} // namespace raphe
