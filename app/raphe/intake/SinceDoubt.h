// What is odd about a date that was told for the beginning of a complaint. The words stay as they were told. Plain function; any
// thread.
#pragma once

#include <QDate>
#include <QString>

namespace raphe {

/// A sentence when the words are a date that is no day of the calendar, or one after today: 2031-04-02, 2.4.2031, 31 February.
/// Empty for everything else, since most of what is told is no date.
[[nodiscard]] QString sinceDoubt(const QString &told, const QDate &today);

} // namespace raphe
