#include "core/examination/RecordWords.h"

#include "core/examination/ComparingWords.h"

#include <QCoreApplication>
#include <QStringList>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ExaminationRecord", text);
}

QString painInWords(TestPain pain)
{
    switch (pain) {
    case TestPain::None: return tr(QT_TRANSLATE_NOOP("ExaminationRecord", "no pain"));
    case TestPain::Other: return tr(QT_TRANSLATE_NOOP("ExaminationRecord", "other pain"));
    case TestPain::Familiar: break;
    }
    return tr(QT_TRANSLATE_NOOP("ExaminationRecord", "familiar pain"));
}

QString valuesInWords(const ExamTest *test, const TestResult &result)
{
    QStringList numbers;
    for (const double value : result.values)
        numbers << QString::number(value);
    const QString unit = test && test->vital ? QLatin1Char(' ') + QString::fromStdString(test->vital->unit) : QString();
    return numbers.join(QLatin1Char('/')) + unit;
}

std::string joined(const QString &name, const QStringList &said, const std::string &note)
{
    QStringList all = said;
    if (!note.empty())
        all << QString::fromStdString(note);
    return (all.isEmpty() ? name : name + QStringLiteral(": ") + all.join(QStringLiteral(", "))).toStdString();
}

} // namespace

std::string namedWithSide(const std::string &name, Side side)
{
    if (side == Side::Midline)
        return name;
    const QString word = side == Side::Right ? tr(QT_TRANSLATE_NOOP("ExaminationRecord", "RIGHT %1"))
                                             : tr(QT_TRANSLATE_NOOP("ExaminationRecord", "LEFT %1"));
    return word.arg(QString::fromStdString(name)).toStdString();
}

std::string inWords(const Examination &examination, const Measure &measure)
{
    const Movement *movement = examination.findMovement(measure.movement);
    QString name = QString::fromStdString(namedWithSide(movement ? movement->name : measure.movement, measure.side));
    if (measure.mode)
        //: %1: a movement
        name = (*measure.mode == MoveMode::Active ? tr(QT_TRANSLATE_NOOP("ExaminationRecord", "%1, active"))
                                                  : tr(QT_TRANSLATE_NOOP("ExaminationRecord", "%1, passive")))
                   .arg(name);
    const auto amount = [&](double value) {
        return movement ? QString::fromStdString(valueInWords(*movement, value)) : QString::number(value);
    };
    QStringList said;
    if (measure.value)
        said << amount(*measure.value);
    if (measure.painFrom)
        said << tr(QT_TRANSLATE_NOOP("ExaminationRecord", "pain from %1")).arg(amount(*measure.painFrom));
    if (measure.familiar)
        said << painInWords(TestPain::Familiar);
    else if (measure.hurts)
        said << tr(QT_TRANSLATE_NOOP("ExaminationRecord", "hurts"));
    return joined(name, said, measure.note);
}

std::string inWords(const Examination &examination, const TestResult &result)
{
    const ExamTest *test = examination.findTest(result.test);
    QStringList said;
    if (result.pain)
        said << painInWords(*result.pain);
    if (result.changesFromAfar)
        said << tr(QT_TRANSLATE_NOOP("ExaminationRecord", "changes with a distant movement"));
    if (result.grade)
        //: %1 of %2: a grade and the highest one
        said << (test ? tr(QT_TRANSLATE_NOOP("ExaminationRecord", "%1 of %2")).arg(*result.grade).arg(highestGradeOf(test->kind))
                      : QString::number(*result.grade));
    if (result.present)
        said << (*result.present ? tr(QT_TRANSLATE_NOOP("ExaminationRecord", "present"))
                                 : tr(QT_TRANSLATE_NOOP("ExaminationRecord", "absent")));
    if (!result.values.empty())
        said << valuesInWords(test, result);
    if (result.unable)
        said << tr(QT_TRANSLATE_NOOP("ExaminationRecord", "could not be done: %1")).arg(QString::fromStdString(*result.unable));
    return joined(QString::fromStdString(namedWithSide(test ? test->name : result.test, result.side)), said, result.note);
}

} // namespace raphe
