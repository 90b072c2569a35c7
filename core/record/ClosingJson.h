// The field `closing` of the visit file (resources/schema/visit.schema.json). For VisitJson. The reader throws Error inside
// guarded(). Which advice there is is known to core/treatment.
#pragma once

#include "core/base/JsonReader.h"
#include "core/record/Closing.h"

#include <nlohmann/json_fwd.hpp>

namespace raphe {

[[nodiscard]] Closing readClosing(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json closingJson(const Closing &closing);

} // namespace raphe
