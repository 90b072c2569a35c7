// The best session plan. Exact for up to `exactAtMost` places, by dynamic programming over the sets of places that come last; of
// more places, those worth most for their time are searched in full, and the bound says how much better any plan could be.
// No state; thread-safe; nothing fails.
#pragma once

#include "core/plan/PlanProblem.h"

namespace raphe::plan {

/// Places that no position reaches are left out. Values below 1, seconds below 1 or beyond mostSeconds, indices of no place and a
/// cycle in `before` are the caller's mistake.
[[nodiscard]] Solution solve(const Problem &problem);

/// The turns, times and value of these places in this order and these positions, whether the plan is allowed or not; the bound is
/// the value.
[[nodiscard]] Solution priced(const Problem &problem, const std::vector<std::pair<std::size_t, std::size_t>> &placesAndPositions);

} // namespace raphe::plan
