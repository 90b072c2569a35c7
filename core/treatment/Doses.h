// How much was worked where, today and in the days before, and what of it bears on today's plan. Plain values; nothing fails.
#pragma once

#include "core/plan/TechniqueChoice.h"
#include "core/record/TreatmentLog.h"

#include <vector>

namespace raphe {

/// A treatment of an earlier visit of the patient.
struct PastTreatment {
    int daysAgo = 0; // 0: earlier today
    TreatmentLog treatment;
};

struct WeekDose {
    Place place;
    std::string technique; // id
    int secondsToday = 0;
    int timesToday = 0;
    int secondsInWeek = 0; // today and the six days before
    int timesInWeek = 0;
    bool operator==(const WeekDose &) const = default;
};

/// What was worked in the last seven days, by place and technique, in the order in which it was first worked, today's first.
[[nodiscard]] std::vector<WeekDose> dosesOf(const TreatmentLog &today, const std::vector<PastTreatment> &earlier);

/// What the plan has to leave room after. What was skipped is none.
[[nodiscard]] std::vector<EarlierWork> earlierWork(const std::vector<PastTreatment> &earlier);

/// Seconds under cups today, and the strongest suction that was told, in kPa.
struct CupDose {
    int seconds = 0;
    std::optional<double> strongest;
    bool operator==(const CupDose &) const = default;
};
[[nodiscard]] CupDose cupsOf(const TreatmentLog &today, const Techniques &techniques);

} // namespace raphe
