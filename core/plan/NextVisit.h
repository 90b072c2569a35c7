// The beginning of a patient's next visit: what is carried over from the record and from the visits before. Plain functions of
// plain values; any thread.
#pragma once

#include "core/record/PatientRecord.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

struct EarlierVisit {
    Visit visit;
    bool isInError = false;
};

/// A visit on that day (ISO 8601 date) about that complaint of the record, or about what the last visit was about. `earlier`: the
/// patient's other visits, newest first. Warning signs that were there on this day come along, also from a visit in error;
/// everything else comes from the newest one that is not: cautions, practitioner, complaints without their ratings and scores,
/// with the day on which they were last confirmed, consents that hold on, what was promised, and what to do at home. The newest
/// one about the same complaint leaves its focus, the goals that are not reached, and the plan of care.
[[nodiscard]] Visit nextVisit(const SafetyRules &rules, const PatientRecord &record, const std::vector<EarlierVisit> &earlier,
    const std::string &today, std::optional<int> episode);

/// Puts a standing condition of the record into the visit; one that needs a place as a caution in words.
void takeStanding(const SafetyRules &rules, const StandingCondition &condition, Visit &visit);

/// The visit's complaints, as asked on that day.
[[nodiscard]] std::vector<Complaint> confirmedOn(const std::string &day, std::vector<Complaint> complaints);

} // namespace raphe
