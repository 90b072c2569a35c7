#include "core/treatment/Doses.h"

#include <algorithm>

namespace raphe {

namespace {

constexpr int daysOfWeek = 7;

bool wasWorked(const TreatmentStep &step)
{
    return step.hasBegun() && step.done != StepDone::Skipped;
}

} // namespace

std::vector<WeekDose> dosesOf(const TreatmentLog &today, const std::vector<PastTreatment> &earlier)
{
    std::vector<WeekDose> out;
    const auto add = [&](const TreatmentLog &treatment, bool isToday) {
        for (const TreatmentStep &step : treatment.steps) {
            if (!wasWorked(step))
                continue;
            auto it = std::find_if(out.begin(), out.end(),
                [&](const WeekDose &dose) { return dose.place == step.place && dose.technique == step.technique; });
            if (it == out.end())
                it = out.insert(out.end(), {step.place, step.technique});
            it->secondsInWeek += step.seconds;
            ++it->timesInWeek;
            if (isToday) {
                it->secondsToday += step.seconds;
                ++it->timesToday;
            }
        }
    };
    add(today, true);
    for (const PastTreatment &past : earlier)
        if (past.daysAgo < daysOfWeek)
            add(past.treatment, past.daysAgo == 0);
    return out;
}

std::vector<EarlierWork> earlierWork(const std::vector<PastTreatment> &earlier)
{
    std::vector<EarlierWork> out;
    for (const PastTreatment &past : earlier)
        for (const TreatmentStep &step : past.treatment.steps)
            if (wasWorked(step))
                out.push_back({step.place, step.technique, past.daysAgo});
    return out;
}

CupDose cupsOf(const TreatmentLog &today, const Techniques &techniques)
{
    CupDose out;
    for (const TreatmentStep &step : today.steps) {
        const Technique *technique = techniques.find(step.technique);
        if (!wasWorked(step) || !(step.kPa || (technique && technique->dose.kPa)))
            continue;
        out.seconds += step.seconds;
        if (step.kPa)
            out.strongest = std::max(out.strongest.value_or(0), *step.kPa);
    }
    return out;
}

} // namespace raphe
