// Goes over a line once, from left to right, and marks what each stretch of it says. Plain function; any thread.
#pragma once

#include "core/language/LineWords.h"
#include "core/language/Mark.h"

#include <string_view>
#include <vector>

namespace raphe::language {

/// Words that say nothing by themselves leave no mark; words that are not known are marked as that.
[[nodiscard]] std::vector<Mark> marksOf(std::string_view line, const LineWords &words);

} // namespace raphe::language
