// The visit file: format "raphe-visit", version 2 (1 is read too), as resources/schema/visit.schema.json says. Unknown fields are
// errors.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/base/Result.h"
#include "core/record/Visit.h"

#include <string>
#include <string_view>

namespace raphe {

class Atlas;

inline constexpr std::string_view visitFormat = "raphe-visit";

/// Whether a finding there can say at which spot: muscles, fasciae, ligaments and tendons.
[[nodiscard]] bool hasSpots(Kind kind);

/// Reads and checks a visit against the atlas (ids, sides, spots, contradictions). `file` is used in messages.
[[nodiscard]] Result<Visit> readVisit(std::string_view text, const std::string &file, const Atlas &atlas);

/// The visit as pretty-printed JSON, UTF-8, stable order; readVisit gives the same visit back.
[[nodiscard]] std::string writeVisit(const Visit &visit);

} // namespace raphe
