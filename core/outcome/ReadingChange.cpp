#include "core/outcome/ReadingChange.h"

#include "core/base/NumberText.h"
#include "core/outcome/ScaleChange.h"

#include <QCoreApplication>

#include <cmath>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ReadingChange", text);
}

QString amount(double value, const ReadingScale &scale)
{
    constexpr double hundredths = 100; // a difference of two tenths is none of their last bits
    return QString::fromStdString(numberText(std::round(value * hundredths) / hundredths) + scale.unit);
}

QString figure(const PublishedFigure &of, const ReadingScale &scale)
{
    return QStringLiteral("%1, %2").arg(amount(of.value, scale), QString::fromStdString(of.source));
}

} // namespace

ReadingChange changeOf(double before, double now, const ReadingScale &scale)
{
    ReadingChange out;
    out.by = now - before;
    const double size = std::abs(out.by);
    constexpr double rounding = 1e-9; // 16.1 - 8.1 is no more than 8
    out.beyond = !scale.error ? Beyond::Unknown : size > scale.error->value + rounding ? Beyond::Beyond : Beyond::Within;
    if (size == 0)
        out.course = ReadingChange::Course::Same;
    else if (out.beyond == Beyond::Unknown)
        out.course = ReadingChange::Course::Unsaid;
    else
        out.course =
            (out.by > 0) == (scale.better == Better::More) ? ReadingChange::Course::Better : ReadingChange::Course::Worse;
    out.isImportant = scale.important && out.beyond == Beyond::Beyond && size >= scale.important->value;
    return out;
}

std::string inWords(const ReadingChange &change, const ReadingScale &scale)
{
    const QString by = amount(std::abs(change.by), scale);
    QString course;
    switch (change.course) {
    case ReadingChange::Course::Same: course = tr(QT_TRANSLATE_NOOP("ReadingChange", "no change")); break;
    case ReadingChange::Course::Better: course = tr(QT_TRANSLATE_NOOP("ReadingChange", "better by %1")).arg(by); break;
    case ReadingChange::Course::Worse: course = tr(QT_TRANSLATE_NOOP("ReadingChange", "worse by %1")).arg(by); break;
    case ReadingChange::Course::Unsaid:
        course = (change.by > 0 ? tr(QT_TRANSLATE_NOOP("ReadingChange", "more by %1"))
                                : tr(QT_TRANSLATE_NOOP("ReadingChange", "less by %1")))
                     .arg(by);
        break;
    }
    if (!scale.error)
        return tr(QT_TRANSLATE_NOOP("ReadingChange", "%1: error unknown")).arg(course).toStdString();
    QString out = (change.beyond == Beyond::Beyond ? tr(QT_TRANSLATE_NOOP("ReadingChange", "%1, beyond the test's error (%2)"))
                                                   : tr(QT_TRANSLATE_NOOP("ReadingChange", "%1, within the test's error (%2)")))
                      .arg(course, figure(*scale.error, scale));
    if (scale.important)
        out += (change.isImportant ? tr(QT_TRANSLATE_NOOP("ReadingChange", "; as much as matters to patients (%1)"))
                                   : tr(QT_TRANSLATE_NOOP("ReadingChange", "; less than matters to patients (%1)")))
                   .arg(figure(*scale.important, scale));
    return out.toStdString();
}

ReadingScale painScale()
{
    return {Better::Less, PublishedFigure{1.77, "1,232 inpatients with spine trouble, secondhand"},
        PublishedFigure{painScoreThreshold.least, painScoreThreshold.source}, {}};
}

ReadingScale gradeScale()
{
    return {Better::Less, {}, {}, {}};
}

} // namespace raphe
