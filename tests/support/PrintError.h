// An error in a message of GoogleTest's.
#pragma once

#include "core/base/Result.h"

#include <ostream>

namespace raphe {

inline void PrintTo(const Error &error, std::ostream *out)
{
    *out << "code " << static_cast<int>(error.code) << " at " << error.place << ": " << error.detail;
}

} // namespace raphe
