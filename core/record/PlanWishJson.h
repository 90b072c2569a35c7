// The field `plan` of the visit file (resources/schema/visit.schema.json). For VisitJson. The reader throws Error inside
// guarded(). Which techniques there are is known to core/plan.
#pragma once

#include "core/base/JsonReader.h"
#include "core/record/PlanWish.h"

#include <nlohmann/json_fwd.hpp>

#include <functional>

namespace raphe {

/// `readPlace`: a place of the atlas, of an object's `structure` and `side`.
[[nodiscard]] PlanWish readPlanWish(const JsonReader &at, const std::function<Place(const JsonReader &)> &readPlace);
[[nodiscard]] nlohmann::ordered_json planWishJson(const PlanWish &wish);

} // namespace raphe
