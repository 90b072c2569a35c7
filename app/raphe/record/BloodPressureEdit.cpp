#include "app/raphe/record/BloodPressureEdit.h"

#include "app/raphe/Style.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/record/DayRow.h"
#include "app/raphe/record/OptionalDateEdit.h"
#include "app/raphe/record/TextLine.h"

#include <QLabel>
#include <QVBoxLayout>

namespace raphe {

QString bloodPressureWords(const BloodPressure &pressure)
{
    return BloodPressureEdit::tr("%1 over %2 mmHg on %3", "systolic, diastolic, a date")
        .arg(pressure.systolic)
        .arg(pressure.diastolic)
        .arg(dayWords(pressure.date));
}

BloodPressureEdit::BloodPressureEdit(QWidget *parent)
    : RecordField(parent),
      m_systolic(new TextLine(tr("Systolic blood pressure"))),
      m_diastolic(new TextLine(tr("Diastolic blood pressure"))),
      m_date(new OptionalDateEdit(tr("Day of the reading"), [](const std::string &) { return QString(); }))
{
    m_systolic->setPlaceholderText(tr("Higher", "the higher number of a blood pressure"));
    m_diastolic->setPlaceholderText(tr("Lower", "the lower number of a blood pressure"));
    auto *over = new QLabel(tr("over", "between the numbers of a blood pressure"));
    auto *unit = new QLabel(tr("mmHg"));
    for (QLabel *words : {over, unit})
        words->setMinimumHeight(touchTarget);
    for (TextLine *line : {m_systolic, m_diastolic}) {
        line->setFixedWidth(84);
        watch(line);
    }
    watch(m_date->line());
    watch(m_date);
    column().addLayout(dayRow({m_systolic, over, m_diastolic, unit}, m_date));
    setFocusProxy(m_systolic);
    offerToKeep();
}

void BloodPressureEdit::give(const std::optional<BloodPressure> &pressure)
{
    const QSignalBlocker quietSystolic(m_systolic);
    const QSignalBlocker quietDiastolic(m_diastolic);
    m_systolic->give(pressure ? std::to_string(pressure->systolic) : std::string());
    m_diastolic->give(pressure ? std::to_string(pressure->diastolic) : std::string());
    m_date->give(pressure ? pressure->date : std::string());
    tell();
}

std::optional<BloodPressure> BloodPressureEdit::value() const
{
    const auto systolic = m_systolic->number();
    const auto diastolic = m_diastolic->number();
    if (!systolic || !diastolic || m_date->value().empty())
        return std::nullopt;
    return BloodPressure{*systolic, *diastolic, m_date->value()};
}

std::optional<Mistake> BloodPressureEdit::ownMistake() const
{
    using P = BloodPressure;
    if (m_systolic->isBlank() && m_diastolic->isBlank() && m_date->isBlank())
        return std::nullopt;
    const auto systolic = m_systolic->number();
    if (!systolic || *systolic < P::lowestSystolic || *systolic > P::highestSystolic)
        return Mistake{tr("Write the higher number as a whole number from %1 to %2, or leave all fields empty.")
                           .arg(P::lowestSystolic)
                           .arg(P::highestSystolic),
            m_systolic};
    const auto diastolic = m_diastolic->number();
    if (!diastolic || *diastolic < P::lowestDiastolic || *diastolic > P::highestDiastolic)
        return Mistake{tr("Write the lower number as a whole number from %1 to %2, or leave all fields empty.")
                           .arg(P::lowestDiastolic)
                           .arg(P::highestDiastolic),
            m_diastolic};
    if (*systolic <= *diastolic)
        return Mistake{tr("The first number has to be the higher one. Check both."), m_systolic};
    if (m_date->isBlank())
        return Mistake{tr("Write the day of the reading, or leave all fields empty."), m_date->line()};
    return std::nullopt;
}

QString BloodPressureEdit::asWritten() const
{
    const QString numbers =
        tr("blood pressure %1 over %2", "as it was written").arg(m_systolic->text().trimmed(), m_diastolic->text().trimmed());
    return m_date->isBlank() ? numbers : tr("%1 on %2", "what, on a date").arg(numbers, m_date->line()->text().trimmed());
}

QString BloodPressureEdit::understood() const
{
    if (const auto pressure = value())
        return tr("%1.", "a sentence").arg(bloodPressureWords(*pressure));
    return m_date->isBlank() ? tr("Not set.") : QString();
}

} // namespace raphe
