// Fields that several parts of the visit file have. The readers throw Error inside guarded().
#pragma once

#include "core/anatomy/Place.h"
#include "core/base/JsonReader.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <string_view>

namespace raphe {

/// The id of something whose list the record does not know: well formed, as that of a structure.
[[nodiscard]] std::string readForeignId(const JsonReader &at);
/// `structure` and `side`.
[[nodiscard]] nlohmann::ordered_json placeJson(const Place &place);
/// Local time of day, HH:MM:SS.
[[nodiscard]] std::string readTimeOfDay(const JsonReader &at);

} // namespace raphe
