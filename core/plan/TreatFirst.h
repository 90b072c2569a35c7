// What to treat first among the findings: a sum of visible terms. Tenderness 4 adds nothing and asks for caution.
#pragma once

#include "core/reasoning/Reason.h"

namespace raphe {

/// Ranks the places found in this visit; same canonical orientation as reason(). `why` names the largest term and any caution.
[[nodiscard]] std::vector<Suggestion> treatFirst(const Linkage &linkage, const Visit &visit, const Constants &constants);

} // namespace raphe
