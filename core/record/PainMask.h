// A pain drawing as cells of front and back. A plain function of plain values; nothing fails, any thread.
#pragma once

#include "core/anatomy/SurfaceMask.h"
#include "core/record/PainDrawing.h"

#include <vector>

namespace raphe {

/// What all patches cover of the silhouette (silhouetteMask of StrokeRaster.h), whoever painted them, confirmed or not, and
/// whatever their intensity. Patches on the side view and the insets show skin that front and back show as well, at another scale
/// or from another side: they mark nothing, and so count in no percent.
[[nodiscard]] SurfaceMask painMask(const std::vector<PainPatch> &pain, const SurfaceMask &silhouette);

} // namespace raphe
