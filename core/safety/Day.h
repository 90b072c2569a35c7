// Counting between days of the calendar, ISO 8601. Nothing for what is no day.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace raphe {

/// Negative when `to` lies before.
[[nodiscard]] std::optional<std::int64_t> daysBetween(const std::string &from, const std::string &to);
/// Whole years, as an age; nothing when `to` lies before. Who was born on 29 February has a birthday on 1 March in other years.
[[nodiscard]] std::optional<int> yearsBetween(const std::string &from, const std::string &to);

} // namespace raphe
