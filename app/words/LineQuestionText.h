// The sentences for what a typed line leaves open, and for what makes no sense in it.
#pragma once

#include "core/language/LineReading.h"

#include <QString>

namespace raphe {

/// One question, the typed words in it.
[[nodiscard]] QString questionText(const LineQuestion &question);
/// What is wrong, and after the dash what to do.
[[nodiscard]] QString mistakeText(const LineMistake &mistake);

} // namespace raphe
