// What stands in the history of a practice, in words: acts, moments, and whose record it was.
#pragma once

#include "core/store/Entries.h"

#include <QString>

#include <cstdint>
#include <string>

namespace raphe {

/// What was done, to follow a name: "opened the record".
[[nodiscard]] QString actWords(EntryKind kind);
/// Milliseconds since 1970, UTC, as local time: "12 November 2026, 14:05".
[[nodiscard]] QString momentWords(std::int64_t milliseconds);
/// A time of care: an ISO 8601 day or moment. What is neither stands as it is.
[[nodiscard]] QString careWords(const std::string &isoTime);

} // namespace raphe
