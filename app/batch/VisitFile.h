// Reads a visit file from disk for a verb.
#pragma once

#include "core/base/Result.h"
#include "core/record/Visit.h"

#include <string>

namespace raphe {
class Atlas;
}

namespace raphe::batch {

[[nodiscard]] Result<Visit> readVisitFile(const std::string &file, const Atlas &atlas);

} // namespace raphe::batch
