// What a round brush paints on a view: the line that its middle took, and how wide it is. Plain values; no threads.
#pragma once

#include "core/anatomy/Outline.h"

#include <vector>

namespace raphe {

struct BrushStroke {
    std::vector<Point> points; // units of the view, as the view shows them; a single one is a dot
    double radius = 0; // units of the view
    bool operator==(const BrushStroke &) const = default;
};

/// As painted on the mirrored view. Twice gives the stroke back.
[[nodiscard]] inline BrushStroke mirrored(BrushStroke stroke)
{
    for (Point &p : stroke.points)
        p.x = 0 - p.x; // 0, never -0
    return stroke;
}

} // namespace raphe
