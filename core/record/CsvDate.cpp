#include "core/record/CsvDate.h"

#include "core/record/Visit.h"

#include <array>
#include <cstddef>
#include <cstdio>
#include <utility>

namespace raphe {

namespace {

// Three whole numbers with points or slashes between them: one or two digits twice, then four.
std::optional<std::array<int, 3>> datePartsOf(const std::string &cell)
{
    std::array<int, 3> parts{};
    std::array<int, 3> digits{};
    std::size_t part = 0;
    char between = 0;
    for (const char c : cell) {
        if (c >= '0' && c <= '9') {
            if (++digits[part] > 4)
                return std::nullopt;
            parts[part] = parts[part] * 10 + (c - '0');
        } else if ((c == '.' || c == '/') && part < 2 && (between == 0 || c == between)) {
            between = c;
            ++part;
        } else {
            return std::nullopt;
        }
    }
    const bool shaped = digits[0] >= 1 && digits[0] <= 2 && digits[1] >= 1 && digits[1] <= 2 && digits[2] == 4;
    return shaped ? std::optional(parts) : std::nullopt;
}

// Which of two numbers between slashes is the day. A number above 12 tells.
std::optional<DateOrder> toldOrder(int first, int second)
{
    constexpr int months = 12;
    if (first > months)
        return DateOrder::DayFirst;
    return second > months ? std::optional(DateOrder::MonthFirst) : std::nullopt;
}

CsvDate refused(ErrorCode code, std::string detail, bool orderNeeded = false)
{
    return {Error{code, {}, std::move(detail)}, orderNeeded};
}

CsvDate noDate(const std::string &cell)
{
    return refused(ErrorCode::OutOfRange, cell + ", allowed: a real date, YYYY-MM-DD, DD.MM.YYYY or with slashes");
}

} // namespace

CsvDate readCsvDate(const std::string &cell, std::optional<DateOrder> chosen)
{
    if (isIsoDate(cell))
        return {cell};
    const std::optional<std::array<int, 3>> parts = datePartsOf(cell);
    if (!parts)
        return noDate(cell);
    auto [day, month, year] = *parts;
    if (cell.find('/') != std::string::npos && day != month) {
        const std::optional<DateOrder> told = toldOrder(day, month);
        if (told && chosen && *told != *chosen)
            return refused(ErrorCode::Contradiction, cell + ", the chosen order of day and month");
        const std::optional<DateOrder> order = told ? told : chosen;
        if (!order)
            return refused(ErrorCode::OutOfRange, cell + ", allowed: a date of which day and month can be told apart", true);
        if (*order == DateOrder::MonthFirst)
            std::swap(day, month);
    }
    std::array<char, 16> iso{};
    std::snprintf(iso.data(), iso.size(), "%04d-%02d-%02d", year, month, day);
    if (!isIsoDate(iso.data()))
        return noDate(cell);
    return {std::string(iso.data())};
}

} // namespace raphe
