// Makes the regions of the skin on a PainBoard known to screen readers: one child a region on each view shown, checked when it is
// painted.
#pragma once

namespace raphe {

/// Registers the factory; further calls do nothing.
void installPainBoardAccessibility();

} // namespace raphe
