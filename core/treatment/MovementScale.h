// The scale that two readings of a movement are held against. A plain function of plain values; nothing fails, any thread.
#pragma once

#include "core/examination/Examination.h"
#include "core/outcome/ReadingChange.h"

namespace raphe {

/// With the published error of the measure's mode and device and its citation; without one where none is published. In the unit
/// of the movement.
[[nodiscard]] ReadingScale movementScale(const Movement &movement, const Measure &measure, const Examination &examination);

} // namespace raphe
