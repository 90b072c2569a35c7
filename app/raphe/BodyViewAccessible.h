// Makes the structures on a BodyView known to screen readers: one child a place of the layer shown.
#pragma once

namespace raphe {

/// Registers the factory; further calls do nothing.
void installBodyViewAccessibility();

} // namespace raphe
