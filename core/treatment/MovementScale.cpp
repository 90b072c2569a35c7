#include "core/treatment/MovementScale.h"

#include "core/examination/Comparing.h"

#include <QCoreApplication>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("MovementScale", text);
}

} // namespace

ReadingScale movementScale(const Movement &movement, const Measure &measure, const Examination &examination)
{
    ReadingScale scale;
    scale.better = movement.lessIsBetter ? Better::Less : Better::More;
    scale.unit = (movement.unit == Unit::Degrees ? tr(QT_TRANSLATE_NOOP("MovementScale", " degrees"))
                                                 : tr(QT_TRANSLATE_NOOP("MovementScale", " mm")))
                     .toStdString();
    if (const ReadingError *error = errorOf(movement, measure.mode, measure.device)) {
        const ExamSource *source = examination.findSource(error->source);
        scale.error = PublishedFigure{error->least(), source ? source->citation : error->source};
    }
    return scale;
}

} // namespace raphe
