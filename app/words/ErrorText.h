// Turns an Error into one sentence that names the place and says what to do.
#pragma once

#include "core/base/Result.h"

#include <QString>

namespace raphe {

[[nodiscard]] QString errorText(const Error &error);

} // namespace raphe
