// Dates as they stand in patient lists. Plain functions of plain values; any thread.
#pragma once

#include "core/base/Result.h"

#include <optional>
#include <string>

namespace raphe {

/// How to read a date such as 03/04/1980. The user chooses; there is no default.
enum class DateOrder { DayFirst, MonthFirst };

struct CsvDate {
    Result<std::string> iso; // ISO 8601 date, or why it is none; the error names no place
    bool orderNeeded = false; // it can be read in two ways and no order was chosen
};

/// Reads YYYY-MM-DD, DD.MM.YYYY, and DD/MM/YYYY or MM/DD/YYYY; days and months with or without a leading zero where points
/// or slashes stand. With slashes a number above 12 tells which is the day; else `chosen` does. A date that speaks against
/// `chosen` is an error.
[[nodiscard]] CsvDate readCsvDate(const std::string &cell, std::optional<DateOrder> chosen);

} // namespace raphe
