#include "core/treatment/WorkWords.h"

#include "core/base/NumberText.h"
#include "core/plan/PlanWords.h"

#include <QCoreApplication>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("WorkWords", text);
}

QString text(const std::string &words)
{
    return QString::fromStdString(words);
}

} // namespace

std::string stepInWords(const TreatmentStep &step, const Techniques &techniques, const Atlas &atlas)
{
    const Technique *technique = techniques.find(step.technique);
    QString out = tr(QT_TRANSLATE_NOOP("WorkWords", "%1: %2, %3"))
                      .arg(text(atlas.spoken(step.place)), text(technique ? technique->name : step.technique),
                          text(minutesInWords(step.seconds)));
    if (step.kPa)
        out += tr(QT_TRANSLATE_NOOP("WorkWords", ", %1 kPa")).arg(text(numberText(*step.kPa)));
    if (step.done == StepDone::Partly)
        out += tr(QT_TRANSLATE_NOOP("WorkWords", ", in part"));
    return out.toStdString();
}

std::vector<std::string> workInWords(const TreatmentLog &treatment, const Techniques &techniques, const Atlas &atlas)
{
    std::vector<std::string> out;
    for (const TreatmentStep &step : treatment.steps)
        if (step.hasBegun() && step.done != StepDone::Skipped)
            out.push_back(stepInWords(step, techniques, atlas));
    return out;
}

} // namespace raphe
