// The pain drawing's part of the visit file (field `pain` of resources/schema/visit.schema.json). For VisitJson.
#pragma once

#include "core/base/JsonReader.h"
#include "core/record/PainDrawing.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace raphe {

/// Reads the list of patches; for use inside guarded(), throws Error with the place. Numbers off their scale, more entries than
/// PainLimits allows and unknown fields are errors. -0 is read as 0.
[[nodiscard]] std::vector<PainPatch> readPainDrawing(const JsonReader &at);

/// readPainDrawing gives the same patches back.
[[nodiscard]] nlohmann::ordered_json painDrawingJson(const std::vector<PainPatch> &pain);

} // namespace raphe
