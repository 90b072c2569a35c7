// What the cautions say of a movement, a test or the play of a joint before it is done. Plain functions; nothing fails.
#pragma once

#include "core/examination/Examination.h"
#include "core/safety/Cautions.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What holds for these actions at any of these structures on this side, gravest first, each rule once. What needs no hands (no
/// actions: blood pressure, pulse, a reflex) is never barred.
[[nodiscard]] std::vector<CautionVerdict> verdictsOn(const Atlas &atlas, const Cautions &cautions,
    const std::vector<std::string> &actions, const std::vector<StructureId> &structures, Side side);

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
