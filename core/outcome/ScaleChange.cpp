#include "core/outcome/ScaleChange.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace raphe {

bool counts(double before, double now, const ScaleThreshold &threshold)
{
    return std::abs(now - before) >= threshold.least;
}

std::string changeInWords(double before, double now, const ScaleThreshold &threshold)
{
    const auto tr = [](const char *text) { return QCoreApplication::translate("ScaleChange", text); };
    const auto number = [](double value) { return QLocale().toString(value, 'g', 2); };
    const double by = std::abs(now - before);
    const QString change = now < before ? tr("less by %1").arg(number(by))
        : now > before                  ? tr("more by %1").arg(number(by))
                                        : tr("the same");
    const QString verdict = counts(before, now, threshold) ? tr("counts as a change") : tr("does not count as a change");
    //: %1: 'less by 3'; %2: whether it counts; %3: a number; %4: author and year
    return tr("%1: %2 (from %3 points on, %4)")
        .arg(change, verdict, number(threshold.least), QString::fromUtf8(threshold.source))
        .toStdString();
}

} // namespace raphe
