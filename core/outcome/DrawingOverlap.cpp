#include "core/outcome/DrawingOverlap.h"

#include <QCoreApplication>

#include <cmath>

namespace raphe {

namespace {

struct Cells {
    int now = 0;
    int before = 0;
    int shared = 0;
    int marked = 0; // by either

    Cells &operator+=(const Cells &other)
    {
        now += other.now;
        before += other.before;
        shared += other.shared;
        marked += other.marked;
        return *this;
    }
    [[nodiscard]] std::optional<double> jaccard() const
    {
        if (now == 0 || before == 0)
            return std::nullopt;
        return static_cast<double>(shared) / marked;
    }
};

Cells cellsOf(const SurfaceMask &now, const SurfaceMask &before, View view)
{
    return {now.count(view), before.count(view), now.countBoth(before, view), now.countEither(before, view)};
}

// Two decimals, cut off rather than rounded: what is below the threshold must not read as the threshold.
QString inDecimals(double jaccard)
{
    return QString::number(std::floor(jaccard * 100 + 1e-9) / 100, 'f', 2);
}

QString tr(const char *text)
{
    return QCoreApplication::translate("Outcome", text);
}

} // namespace

std::optional<OverlapVerdict> DrawingOverlap::verdict() const
{
    if (!both)
        return std::nullopt;
    return *both < RedrawingError::leastJaccard ? OverlapVerdict::MayHaveMoved : OverlapVerdict::WithinRedrawingError;
}

DrawingOverlap overlapOf(const SurfaceMask &now, const SurfaceMask &before)
{
    Cells together = cellsOf(now, before, View::Front);
    const Cells back = cellsOf(now, before, View::Back);
    DrawingOverlap overlap{together.jaccard(), back.jaccard(), std::nullopt};
    together += back;
    overlap.both = together.jaccard();
    return overlap;
}

std::string inWords(const DrawingOverlap &overlap)
{
    const auto verdict = overlap.verdict();
    if (!verdict)
        return tr(QT_TRANSLATE_NOOP(
                      "Outcome", "Nothing to compare: one of the two drawings shows nothing on the front and the back view."))
            .toStdString();
    const QString said = *verdict == OverlapVerdict::MayHaveMoved
        ? tr(QT_TRANSLATE_NOOP("Outcome", "The pain may have moved: the drawings overlap by %1, less than %2."))
        : tr(QT_TRANSLATE_NOOP("Outcome", "Within redrawing error: the drawings overlap by %1, not less than %2."));
    const QString basis = tr(QT_TRANSLATE_NOOP("Outcome",
        "Overlap is the area that both drawings mark, of the area that either marks (0 to 1). Patients with low back or "
        "neck pain who drew again one minute later overlapped by %1 on average (standard deviation %2); on a normal curve one "
        "in twenty falls below %3. That was a one-minute retest: between two visits even pain that has not moved may overlap "
        "less."));
    return (said.arg(inDecimals(*overlap.both)).arg(RedrawingError::leastJaccard, 0, 'f', 2) + QLatin1Char(' ')
        + basis.arg(RedrawingError::mean, 0, 'f', 2)
              .arg(RedrawingError::standardDeviation, 0, 'f', 2)
              .arg(RedrawingError::leastJaccard, 0, 'f', 2))
        .toStdString();
}

} // namespace raphe
