#include "app/raphe/patients/PersonWords.h"

#include <QCoreApplication>
#include <QLocale>

namespace raphe {

QString dayWords(const std::string &isoDate)
{
    const QDate date = QDate::fromString(QString::fromStdString(isoDate), Qt::ISODate);
    return date.isValid() ? QLocale().toString(date, QStringLiteral("d MMMM yyyy")) : QString();
}

QString bornWords(const std::string &isoDate, const QDate &today)
{
    const QDate born = QDate::fromString(QString::fromStdString(isoDate), Qt::ISODate);
    if (!born.isValid())
        return QCoreApplication::translate("PersonWords", "no birth date");
    int years = today.year() - born.year();
    if (today < born.addYears(years))
        --years;
    return QCoreApplication::translate("PersonWords", "born %1, %n years", "%1: a date", years).arg(dayWords(isoDate));
}

QString sexInWords(Sex sex)
{
    return sex == Sex::Female ? QCoreApplication::translate("PersonWords", "female")
                              : QCoreApplication::translate("PersonWords", "male");
}

} // namespace raphe
