// A movement's clause to measurements. Plain functions.
#pragma once

#include "core/language/Clause.h"
#include "core/language/Issue.h"
#include "core/language/Places.h"

#include <optional>
#include <vector>

namespace raphe::language {

/// One value a side; an issue where the side, the movement or the number is open. `head` is the side that a heading said.
[[nodiscard]] std::vector<Measure> measuresOf(
    const Clause &clause, const std::optional<SideSaid> &head, const LineWords &words, Issues &issues);

} // namespace raphe::language
