// The field `treatment` of the visit file (resources/schema/visit.schema.json). For VisitJson. The reader throws Error inside
// guarded(). Which techniques and rules there are is known to core/plan and core/safety.
#pragma once

#include "core/base/JsonReader.h"
#include "core/record/TreatmentLog.h"

#include <nlohmann/json_fwd.hpp>

#include <functional>

namespace raphe {

/// `readPlace`: a place of the atlas, of an object's `structure` and `side`.
[[nodiscard]] TreatmentLog readTreatment(const JsonReader &at, const std::function<Place(const JsonReader &)> &readPlace);
[[nodiscard]] nlohmann::ordered_json treatmentJson(const TreatmentLog &treatment);

} // namespace raphe
