// Whether the program knows all that a visit names. What it has no rules for would be kept, and never thought of.
#pragma once

#include "core/base/Result.h"
#include "core/examination/Examination.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <string>

namespace raphe {

/// Fails with `file` and JSON pointer for a condition, warning sign, movement or test that is unknown.
[[nodiscard]] Result<Done> checkKnownContent(
    const SafetyRules &rules, const Examination &examination, const Visit &visit, const std::string &file);

} // namespace raphe
