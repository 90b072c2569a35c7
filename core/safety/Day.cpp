#include "core/safety/Day.h"

#include <QDate>

#include <utility>

namespace raphe {

namespace {

QDate dayOf(const std::string &isoDate)
{
    return QDate::fromString(QString::fromStdString(isoDate), Qt::ISODate);
}

} // namespace

std::optional<std::int64_t> daysBetween(const std::string &from, const std::string &to)
{
    const QDate first = dayOf(from);
    const QDate last = dayOf(to);
    if (!first.isValid() || !last.isValid())
        return std::nullopt;
    return first.daysTo(last);
}

std::optional<int> yearsBetween(const std::string &from, const std::string &to)
{
    const QDate first = dayOf(from);
    const QDate last = dayOf(to);
    if (!first.isValid() || !last.isValid() || last < first)
        return std::nullopt;
    const bool hadBirthday = std::pair(last.month(), last.day()) >= std::pair(first.month(), first.day());
    return last.year() - first.year() - (hadBirthday ? 0 : 1);
}

} // namespace raphe
