// The field `letters` of the visit file (resources/schema/visit.schema.json), and addressees, which the settings of a practice
// have too. The readers throw Error inside guarded().
#pragma once

#include "core/base/JsonReader.h"
#include "core/record/Letter.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace raphe {

[[nodiscard]] std::vector<Letter> readLetters(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json lettersJson(const std::vector<Letter> &letters);

/// Fails when neither name nor role says anything.
[[nodiscard]] Addressee readAddressee(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json addresseeJson(const Addressee &addressee);

} // namespace raphe
