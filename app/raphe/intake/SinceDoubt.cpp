#include "app/raphe/intake/SinceDoubt.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("SinceDoubt", text);
}

// 0: the word names no month.
int monthNamed(const QString &word)
{
    for (const QLocale &locale : {QLocale(), QLocale::c()})
        for (int month = 1; month <= 12; ++month)
            if (locale.monthName(month).compare(word, Qt::CaseInsensitive) == 0)
                return month;
    return 0;
}

} // namespace

QString sinceDoubt(const QString &told, const QDate &today)
{
    static const QRegularExpression iso(QStringLiteral("^\\s*(\\d{4})-(\\d{1,2})-(\\d{1,2})\\s*$"));
    static const QRegularExpression dotted(QStringLiteral("^\\s*(\\d{1,2})\\.\\s*(\\d{1,2})\\.\\s*(\\d{4})\\s*$"));
    static const QRegularExpression named(QStringLiteral("^\\s*(\\d{1,2})\\.?\\s+(\\p{L}+)(?:\\s+(\\d{4}))?\\s*$"));
    constexpr int leapYear = 2000; // of a day without a year: may be 29 February
    int year = 0, month = 0, day = 0;
    bool hasYear = true;
    if (const auto match = iso.match(told); match.hasMatch()) {
        year = match.captured(1).toInt();
        month = match.captured(2).toInt();
        day = match.captured(3).toInt();
    } else if (const auto numbers = dotted.match(told); numbers.hasMatch()) {
        day = numbers.captured(1).toInt();
        month = numbers.captured(2).toInt();
        year = numbers.captured(3).toInt();
    } else if (const auto words = named.match(told); words.hasMatch() && monthNamed(words.captured(2)) > 0) {
        day = words.captured(1).toInt();
        month = monthNamed(words.captured(2));
        hasYear = !words.captured(3).isEmpty();
        year = hasYear ? words.captured(3).toInt() : leapYear;
    } else
        return {};
    if (!QDate::isValid(year, month, day))
        return tr("There is no such day. It is kept as told; a year, a month or 'not known' will do.");
    if (hasYear && QDate(year, month, day) > today)
        return tr("This day is still to come. It is kept as told; a year, a month or 'not known' will do.");
    return {};
}

} // namespace raphe
