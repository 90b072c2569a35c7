// What changed at the retest, in the lines of a letter. Plain functions; nothing fails, any thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/examination/Examination.h"
#include "core/record/Visit.h"

#include <string>
#include <vector>

namespace raphe {

/// What is more than the published error first, each with its verdict; then what no error is published for, in one line for each
/// place, movement and test; then what was not examined again.
[[nodiscard]] std::vector<std::string> changeLines(const Visit &visit, const Examination &examination, const Atlas &atlas);

} // namespace raphe
