// Random walk with restart from the findings, solved exactly, reported as lift over the walk with uniform restart.
#pragma once

#include "core/reasoning/Linkage.h"

#include <vector>

namespace raphe {

/// Solves p = c e + (1 - c) P^T p by sparse LU, P the row-normalised weights and e the start (normalised here).
/// `absorbing` places keep what reaches them: nothing passes through. All vectors are indexed as linkage.places().
/// An empty start gives zeros.
[[nodiscard]] std::vector<double> walk(
    const Linkage &linkage, std::vector<double> start, const std::vector<bool> &absorbing, double restart);

/// walk / walk from everywhere: above 1 where the findings reach more than chance, so that big structures do not win by size.
[[nodiscard]] std::vector<double> lift(
    const Linkage &linkage, const std::vector<double> &start, const std::vector<bool> &absorbing, double restart);

} // namespace raphe
