// What of an examination stands in a letter: what was found and matters, where a movement is lost or hurts, which tests say
// something, and in one line each what was clear, what was negative and what could not be examined. The rest is counted. How many
// lines there are at most is our choice, no source. Plain functions; nothing fails, any thread.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/examination/Comparing.h"
#include "core/examination/Examination.h"
#include "core/record/Visit.h"

#include <string>
#include <vector>

namespace raphe {

/// Found by hand: what the patient knows as theirs first, then by the sum of the grades; a joint play that is not normal counts
/// like a grade of its distance from it. Equal ones in the order of examination.
[[nodiscard]] std::vector<Finding> findingsThatMatter(const Visit &visit);

[[nodiscard]] std::vector<std::string> findingLines(const Atlas &atlas, const Visit &visit);
/// Movements that bring pain; that are less than on the other side by more than the published error of measuring; or two standard
/// deviations and more beyond the published mean (common practice, no source). Others in one line.
[[nodiscard]] std::vector<std::string> movementLines(
    const Examination &examination, const Reference &reference, const Visit &visit);
/// Vital signs and tests with an answer that counts, what brought the patient's own pain first. Negative ones in one line.
[[nodiscard]] std::vector<std::string> testLines(const Examination &examination, const Visit &visit);
/// Clear places that bear on what was found: on the other side of what is listed, or under the skin where it hurts. And places
/// that could not be examined, with the reason.
[[nodiscard]] std::vector<std::string> clearLines(const Regions &regions, const Visit &visit);

} // namespace raphe
