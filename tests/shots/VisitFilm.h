// Intake and examination filmed in steps: a new patient and a follow-up, by mouse and by keys, each screen at a laptop's and a
// desk's size.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/Learned.h"

#include <QString>

namespace raphe {

/// Names of files come of `name` with %1 as the screen; false when something could not be done or written.
[[nodiscard]] bool filmVisit(const Learned &learned, const Theme &theme, const QString &name);

} // namespace raphe
