// What the cautions say of a movement, a test or the play of a joint before it is done. Plain functions; nothing fails.
#pragma once

#include "core/examination/Examination.h"
#include "core/safety/Cautions.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What holds for its actions at what it loads on this side, and for a test at what it loads on the other; gravest first, each
/// rule once. What has no actions in its content is never barred, and no
/// vital sign by what stops everything everywhere.
[[nodiscard]] std::vector<CautionVerdict> verdictsOn(
    const Atlas &atlas, const Cautions &cautions, const Movement &movement, Side side);
[[nodiscard]] std::vector<CautionVerdict> verdictsOn(
    const Atlas &atlas, const Cautions &cautions, const ExamTest &test, Side side);
/// Of feeling how a joint moves and what its end is like.
[[nodiscard]] std::vector<CautionVerdict> verdictsOnPlay(
    const Atlas &atlas, const Cautions &cautions, const StructureId &joint, Side side);

/// The stop among them, as they are sorted.
[[nodiscard]] const CautionVerdict *stopAmong(const std::vector<CautionVerdict> &verdicts);

} // namespace raphe
