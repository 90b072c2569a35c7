#include "app/raphe/record/PregnancyEdit.h"

#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/record/DayRow.h"
#include "app/raphe/record/OptionalDateEdit.h"
#include "app/raphe/record/TextLine.h"

#include <QVBoxLayout>

namespace raphe {

namespace {

QString translated(const char *text)
{
    return PregnancyEdit::tr(text);
}

} // namespace

QString pregnancyWords(const Pregnancy &pregnancy)
{
    return translated(QT_TR_NOOP("Week %1 on %2")).arg(pregnancy.week).arg(dayWords(pregnancy.date));
}

QString weekTodayWords(const Pregnancy &pregnancy, const QDate &today)
{
    const QDate counted = QDate::fromString(QString::fromStdString(pregnancy.date), Qt::ISODate);
    const qint64 days = counted.daysTo(today);
    if (days < 0)
        return translated(QT_TR_NOOP("This day is still to come. Is that right?"));
    const qint64 week = pregnancy.week + days / 7;
    if (week > Pregnancy::lastWeek)
        return translated(QT_TR_NOOP("That is past week %1 today. Take it out when it no longer holds."))
            .arg(Pregnancy::lastWeek);
    constexpr int due = 40; // weeks: common practice, no source
    if (week > due)
        return translated(QT_TR_NOOP("That makes week %1 today. Is the child born? Then take it out.")).arg(week);
    return translated(QT_TR_NOOP("That makes week %1 today.")).arg(week);
}

PregnancyEdit::PregnancyEdit(QWidget *parent)
    : RecordField(parent),
      m_week(new TextLine(tr("Week of pregnancy"))),
      m_date(new OptionalDateEdit(tr("Day on which the week was counted"), [](const std::string &) { return QString(); }))
{
    m_week->setPlaceholderText(tr("Week"));
    m_week->setFixedWidth(84);
    column().addLayout(dayRow({m_week}, m_date));
    setFocusProxy(m_week);
    watch(m_week);
    watch(m_date->line());
    watch(m_date);
    offerToKeep();
}

void PregnancyEdit::give(const std::optional<Pregnancy> &pregnancy)
{
    const QSignalBlocker quiet(m_week);
    m_week->give(pregnancy ? std::to_string(pregnancy->week) : std::string());
    m_date->give(pregnancy ? pregnancy->date : std::string());
    tell();
}

std::optional<Pregnancy> PregnancyEdit::value() const
{
    const auto week = m_week->number();
    if (!week || m_date->value().empty())
        return std::nullopt;
    return Pregnancy{*week, m_date->value()};
}

std::optional<Mistake> PregnancyEdit::ownMistake() const
{
    if (m_week->isBlank() && m_date->isBlank())
        return std::nullopt;
    const auto week = m_week->number();
    if (!week || *week < Pregnancy::firstWeek || *week > Pregnancy::lastWeek)
        return Mistake{tr("Write the week as a number from %1 to %2, or leave both fields empty.")
                           .arg(Pregnancy::firstWeek)
                           .arg(Pregnancy::lastWeek),
            m_week};
    if (m_date->isBlank())
        return Mistake{tr("Write the day on which this was the week, or leave both fields empty."), m_date->line()};
    return std::nullopt;
}

QString PregnancyEdit::asWritten() const
{
    const QString week = tr("week %1 of a pregnancy", "as it was written").arg(m_week->text().trimmed());
    return m_date->isBlank() ? week : tr("%1 on %2", "what, on a date").arg(week, m_date->line()->text().trimmed());
}

QString PregnancyEdit::understood() const
{
    const auto pregnancy = value();
    if (!pregnancy)
        return m_date->isBlank() ? tr("Not set.") : QString();
    return tr("%1. %2", "week and day, the week today")
        .arg(pregnancyWords(*pregnancy), weekTodayWords(*pregnancy, QDate::currentDate()));
}

} // namespace raphe
