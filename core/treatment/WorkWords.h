// What was done, in words: for the retest, the note and the day after. No state; thread-safe.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/plan/Technique.h"
#include "core/record/TreatmentLog.h"

#include <string>
#include <vector>

namespace raphe {

/// 'right piriformis: sustained pressure on a spot, 1 min 30 s'.
[[nodiscard]] std::string stepInWords(const TreatmentStep &step, const Techniques &techniques, const Atlas &atlas);
/// Of each step that was done, at least in part, in the order of time.
[[nodiscard]] std::vector<std::string> workInWords(
    const TreatmentLog &treatment, const Techniques &techniques, const Atlas &atlas);

} // namespace raphe
