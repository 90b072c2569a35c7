#include "core/treatment/CareProgress.h"

#include "core/base/NumberText.h"
#include "core/examination/ComparingWords.h"
#include "core/examination/RecordWords.h"
#include "core/outcome/ScaleChange.h"
#include "core/treatment/MovementScale.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("CareProgress", text);
}

ReadingScale activityScale(const ScaleThreshold &threshold)
{
    return {Better::More, PublishedFigure{threshold.least, threshold.source}, {}, {}};
}

std::string meanText(int sum, int count)
{
    constexpr double hundredths = 100;
    return numberText(std::round(hundredths * sum / count) / hundredths);
}

// What was read at both visits, in today's order.
class Readings {
public:
    explicit Readings(const Examination &examination) : m_examination(examination) { }

    std::vector<CareReading> between(const Visit &then, const Visit &now)
    {
        if (!then.complaints.empty() && !now.complaints.empty()) {
            addPain(then.complaints.front().now, now.complaints.front().now);
            addActivities(then.complaints.front().activities, now.complaints.front().activities);
        }
        for (const Measure &measure : now.measures)
            for (const Measure &before : then.measures)
                if (std::tie(before.movement, before.side, before.mode, before.device)
                    == std::tie(measure.movement, measure.side, measure.mode, measure.device))
                    addMovement(before, measure);
        return std::move(m_out);
    }

private:
    void add(std::string name, std::string before, std::string now, const ReadingChange &change, const ReadingScale &scale)
    {
        m_out.push_back({std::move(name), std::move(before), std::move(now), change, inWords(change, scale)});
    }

    void addPain(std::optional<PainScore> then, std::optional<PainScore> now)
    {
        if (then && now)
            add(tr(QT_TRANSLATE_NOOP("CareProgress", "pain now")).toStdString(), std::to_string(then->value),
                std::to_string(now->value), changeOf(then->value, now->value, painScale()), painScale());
    }

    void addActivities(std::vector<Activity> then, const std::vector<Activity> &now)
    {
        const ReadingScale one = activityScale(activityThreshold);
        int count = 0;
        int sumThen = 0;
        int sumNow = 0;
        for (const Activity &activity : now) {
            const auto before = std::find_if(then.begin(), then.end(),
                [&](const Activity &other) { return other.isComplete() && other.name == activity.name; });
            if (!activity.isComplete() || before == then.end())
                continue;
            add(activity.name, std::to_string(*before->score), std::to_string(*activity.score),
                changeOf(*before->score, *activity.score, one), one);
            ++count;
            sumThen += *before->score;
            sumNow += *activity.score;
            then.erase(before); // a name that was written twice is no second pair of it
        }
        if (count < 2)
            return;
        // Of the sums: means that differ by exactly the threshold, as 8/3 and 14/3, would differ by a last bit more.
        const ReadingScale mean = activityScale(activitiesThreshold);
        const ReadingChange change = changeOf(0, static_cast<double>(sumNow - sumThen) / count, mean);
        //: %1: two or more
        add(tr(QT_TRANSLATE_NOOP("CareProgress", "mean of %1 activities")).arg(count).toStdString(), meanText(sumThen, count),
            meanText(sumNow, count), change, mean);
    }

    void addMovement(const Measure &before, const Measure &now)
    {
        const Movement *movement = m_examination.findMovement(now.movement);
        if (!movement || !before.value || !now.value)
            return;
        const ReadingScale scale = movementScale(*movement, now, m_examination);
        add(namedWithSide(movement->name, now.side), valueInWords(*movement, *before.value), valueInWords(*movement, *now.value),
            changeOf(*before.value, *now.value, scale), scale);
    }

    const Examination &m_examination;
    std::vector<CareReading> m_out;
};

} // namespace

CareProgress careProgress(const Visit &today, const std::vector<EarlierVisit> &earlier, const Examination &examination)
{
    CareProgress out;
    const std::optional<CarePlan> &plan = today.closing.plan;
    if (!plan || today.date <= plan->agreed) // ISO 8601 dates are in order as texts are
        return out;
    const Visit *agreement = nullptr;
    out.visits = 1;
    for (const auto &[visit, isInError] : earlier) {
        if (isInError || visit.episode() != today.episode())
            continue;
        if (visit.date == plan->agreed && !agreement)
            agreement = &visit;
        if (visit.date > plan->agreed && visit.date <= today.date)
            ++out.visits;
    }
    if (agreement)
        out.readings = Readings(examination).between(*agreement, today);
    const auto isAny = [&](ReadingChange::Course course) {
        return std::any_of(out.readings.begin(), out.readings.end(), [&](const CareReading &reading) {
            return reading.change.course == course && reading.change.beyond == Beyond::Beyond;
        });
    };
    out.isBetter = isAny(ReadingChange::Course::Better);
    out.isWorse = isAny(ReadingChange::Course::Worse);
    out.isToReview = out.visits >= plan->visits && !out.isBetter && !today.closing.review;
    return out;
}

} // namespace raphe
