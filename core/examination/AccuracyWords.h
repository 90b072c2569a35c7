// Shares and ratios with their 95 % intervals, and what one study says of a test, in words. Nothing fails.
#pragma once

#include "core/examination/Diagnostics.h"
#include "core/examination/Examination.h"

#include <optional>
#include <string>

namespace raphe {

/// '15 of 22 (0.47 to 0.84)'.
[[nodiscard]] std::string inWords(const Share &share);
/// '4.29 (2.31 to 7.96)'.
[[nodiscard]] std::string inWords(const std::optional<Ratio> &ratio);
/// The citation, and that we have it from memory where that is so.
[[nodiscard]] std::string sourceInWords(const Examination &examination, const std::string &source, Reading read);
/// Whose patients, against what, sensitivity and specificity, ratios where the table is known, and the source.
[[nodiscard]] std::string inWords(const Accuracy &accuracy, const Examination &examination);

} // namespace raphe
