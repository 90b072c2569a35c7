#include "app/raphe/patients/RecordComparison.h"

#include "app/raphe/patients/PersonWords.h"

#include <QCoreApplication>
#include <QStringList>

#include <optional>

namespace raphe {

namespace {

QString tr(const char *text, const char *about = nullptr)
{
    return QCoreApplication::translate("RecordComparison", text, about);
}

// The parts that are there, with commas between.
QString together(const QStringList &parts)
{
    QStringList given = parts;
    given.removeAll(QString());
    return given.join(QStringLiteral(", "));
}

QString words(const std::string &text)
{
    return QString::fromStdString(text);
}

QString words(const Contact &contact)
{
    return together({words(contact.name), words(contact.phone)});
}

QString words(const Surgery &surgery)
{
    return together({words(surgery.text), surgery.year ? QString::number(*surgery.year) : QString()});
}

QString words(const Implant &implant)
{
    return together({words(implant.text), words(implant.place)});
}

QString words(const StandingCondition &condition)
{
    return together({words(condition.id).replace(QLatin1Char('-'), QLatin1Char(' ')), words(condition.note)});
}

QString words(const RuledOut &ruledOut)
{
    return together({words(ruledOut.id).replace(QLatin1Char('-'), QLatin1Char(' ')), words(ruledOut.because)});
}

QString words(const std::optional<Sex> &sex)
{
    return sex ? sexInWords(*sex) : QString();
}

QString words(const std::optional<int> &height)
{
    return height ? tr("%1 cm", "height").arg(*height) : QString();
}

QString words(const Pregnancy &pregnancy)
{
    return tr("week %1 on %2", "of pregnancy, on a date").arg(pregnancy.week).arg(dayWords(pregnancy.date));
}

QString words(const BloodPressure &pressure)
{
    return tr("%1/%2 on %3", "blood pressure, on a date")
        .arg(pressure.systolic)
        .arg(pressure.diastolic)
        .arg(dayWords(pressure.date));
}

QString words(const PatientComplaint &complaint)
{
    return together({words(complaint.text), words(complaint.since), complaint.closed ? tr("closed", "a complaint") : QString()});
}

template <class T> QString words(const std::optional<T> &value)
{
    return value ? words(*value) : QString();
}

template <class T> QString words(const std::vector<T> &values)
{
    QStringList lines;
    for (const T &value : values)
        lines << words(value);
    return lines.join(QLatin1Char('\n'));
}

QString days(const std::vector<std::string> &dates)
{
    QStringList lines;
    for (const std::string &date : dates)
        lines << dayWords(date);
    return lines.join(QLatin1Char('\n'));
}

std::vector<ComparedLine> linesOf(const PatientRecord &a, const PatientRecord &b)
{
    return {
        {tr("Name"), words(a.name), words(b.name)},
        {tr("Also known as"), words(a.otherNames), words(b.otherNames)},
        {tr("Born"), dayWords(a.born), dayWords(b.born)},
        {tr("Other birth dates"), days(a.otherBorn), days(b.otherBorn)},
        {tr("Sex"), words(a.sex), words(b.sex)},
        {tr("Height"), words(a.height), words(b.height)},
        {tr("Mark"), words(a.mark), words(b.mark)},
        {tr("Language"), words(a.language), words(b.language)},
        {tr("Interpreter"), words(a.interpreter), words(b.interpreter)},
        {tr("Phone"), words(a.phone), words(b.phone)},
        {tr("Email"), words(a.email), words(b.email)},
        {tr("Address"), words(a.address), words(b.address)},
        {tr("Doctor"), words(a.doctor), words(b.doctor)},
        {tr("Emergency contact"), words(a.emergency), words(b.emergency)},
        {tr("Guardian"), words(a.guardian), words(b.guardian)},
        {tr("Medicines"), words(a.medicines), words(b.medicines)},
        {tr("Allergies"), words(a.allergies), words(b.allergies)},
        {tr("Surgery"), words(a.surgery), words(b.surgery)},
        {tr("Implants"), words(a.implants), words(b.implants)},
        {tr("Conditions"), words(a.conditions), words(b.conditions)},
        {tr("Not so"), words(a.ruledOut), words(b.ruledOut)},
        {tr("Pregnancy"), words(a.pregnancy), words(b.pregnancy)},
        {tr("Other statements of pregnancy"), words(a.otherPregnancies), words(b.otherPregnancies)},
        {tr("Blood pressure"), words(a.bloodPressure), words(b.bloodPressure)},
        {tr("Other blood pressures"), words(a.otherBloodPressures), words(b.otherBloodPressures)},
        {tr("To clarify"), words(a.unclear), words(b.unclear)},
        {tr("Complaints"), words(a.complaints), words(b.complaints)},
    };
}

} // namespace

QString ComparedLine::inAWord() const
{
    if (!differs())
        return tr("same", "of two records");
    if (first.isEmpty())
        return tr("only second", "of two records");
    return second.isEmpty() ? tr("only first", "of two records") : tr("differs", "of two records");
}

std::vector<ComparedLine> compareRecords(const PatientRecord &first, const PatientRecord &second)
{
    std::vector<ComparedLine> lines = linesOf(first, second);
    std::erase_if(lines, [](const ComparedLine &line) { return line.first.isEmpty() && line.second.isEmpty(); });
    return lines;
}

} // namespace raphe
