// What the visit says of a movement or a test, in words: for the timeline and for paper. Nothing fails.
#pragma once

#include "core/examination/Examination.h"

#include <string>

namespace raphe {

/// 'RIGHT hip internal rotation', without a side word where there are no sides.
[[nodiscard]] std::string namedWithSide(const std::string &name, Side side);
/// 'RIGHT hip internal rotation, passive: 24 degrees, pain from 20 degrees, familiar'. An id that there is no more stands as it
/// is.
[[nodiscard]] std::string inWords(const Examination &examination, const Measure &measure);
/// 'LEFT slump: familiar pain, changes with a distant movement'.
[[nodiscard]] std::string inWords(const Examination &examination, const TestResult &result);

} // namespace raphe
