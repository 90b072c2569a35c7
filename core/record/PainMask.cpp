#include "core/record/PainMask.h"

#include "core/anatomy/StrokeRaster.h"

namespace raphe {

SurfaceMask painMask(const std::vector<PainPatch> &pain, const SurfaceMask &silhouette)
{
    SurfaceMask mask;
    for (const PainPatch &patch : pain)
        for (const BrushStroke &stroke : patch.strokes)
            paintStroke(mask, patch.view, stroke);
    mask.keepOnly(silhouette);
    return mask;
}

} // namespace raphe
