// Comparisons of movements in words, the same on screen and on paper: how far, against what error or whose range, from which
// source. Nothing fails.
#pragma once

#include "core/examination/Comparing.h"

#include <string>

namespace raphe {

/// 'Soucie 2011', of the id 'soucie-2011'.
[[nodiscard]] std::string shortNameOf(const std::string &source);
/// '24 degrees', '98 mm'; whole numbers without decimals.
[[nodiscard]] std::string valueInWords(const Movement &movement, double value);
/// 'RIGHT 8 degrees less than LEFT: within the error of measuring (8 degrees, smallest detectable change at 90 %; ...)'.
[[nodiscard]] std::string inWords(const Movement &movement, const SideComparison &sides);
/// '12 degrees below the mean of women of 20 to 44 years (134 degrees, passive, goniometer; ...)', with the z-score where the
/// source gives an SD; or why nothing can be said.
[[nodiscard]] std::string inWords(const Movement &movement, const NormComparison &norm);

} // namespace raphe
