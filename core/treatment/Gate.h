// What holds for work at a place, asked again each time that it begins. No state; thread-safe.
#pragma once

#include "core/plan/SessionPlan.h"
#include "core/record/TreatmentLog.h"
#include "core/safety/Cautions.h"

#include <vector>

namespace raphe {

/// The verdicts that concern the step's technique at its place, gravest first. A technique that is not known is held by all.
[[nodiscard]] std::vector<CautionVerdict> gateOf(
    const Cautions &cautions, const Techniques &techniques, const TreatmentStep &step);

/// The steps of a plan, as they stand before the work; without those that were done today already.
[[nodiscard]] std::vector<TreatmentStep> stepsAhead(const SessionPlan &plan, const TreatmentLog &today = {});

} // namespace raphe
