// A copy of a patient's visits for teaching: without names, words and real dates. Plain functions of plain values; any thread.
//
// What remains
// - Where it hurts, the pain drawing as painted, and all places, sides, spots and ends of findings, conditions, warning signs,
//   judgements, plan and treatment.
// - All grades, scores, values, flags and answers from closed lists: of findings, measures, tests, scales, consents (whether
//   given, a chaperone present, a guardian there), warning signs (what was decided), promises kept, course and reaction,
//   treatment (position, seconds, suction, what was done and said from the list), retest, goals reached, plan of care, decisions.
// - Ids that are the program's own: conditions, warning signs, consent items, movements, tests, techniques, rules that were
//   minded, signs at which the work was stopped, advice for home; words for what tissue feels like that the program knows.
// - Intervals: all dates move by the same number of days, so that the first visit is on `neutralDay`. Without a visit that has a
//   date, the earliest of all dates does. A date that then would have another year than 0000 to 9999 becomes `neutralDay`.
// - Clock times since the first of the visit, which becomes 00:00:00; also past midnight.
// - Age in whole years on the day of the first visit: the birth date becomes a 1 January. At a later visit the copy's patient can
//   be a year younger than the patient was. Nobody is older than 90 at any visit: so does the US safe-harbour rule for health
//   data, 45 CFR 164.514(b)(2), which puts all ages above 89 into one group (from memory). The copy does not claim to be
//   de-identified by that rule, which takes out dates altogether, or by any other law. Without any date the birth date goes.
// - The numbers of complaints, counted anew; names of activities as numbers, the same one for the same words.
//
// What goes
// - The patient's name: another stands in its place. All other words of patient and practitioner say `removedWords`: also
//   impression, code and its list, wording of advice, reasons, who was told. Where nothing was said nothing is.
// - What the program does not know: conditions, signs, items, movements, tests, wishes for techniques, rules and words for tissue
//   that are none of its own. A technique of the practice is called `removedTechnique`, its advice has no id.
// - Letters.
// - Warning signs that are asked about only when nobody else can hear, with their answers: who knows the patient could read
// along. Nothing that the program reasons about is changed but for these: it thinks about the copy as about the visit, as long as
// the visit holds no such sign, nothing that the program does not know, and the patient's age is below 90.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/examination/Examination.h"
#include "core/plan/Technique.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"
#include "core/treatment/HomeAdvice.h"

#include <string>
#include <vector>

namespace raphe {

inline constexpr const char *removedWords = "[removed]";
inline constexpr const char *removedTechnique = "removed";
inline constexpr const char *neutralDay = "2000-01-01";

/// What there is in the program's own content.
struct KnownContent {
    const Atlas &atlas;
    const SafetyRules &rules;
    const Examination &examination;
    const Techniques &techniques; // without those of a practice
    const HomeAdvice &advice; // without that of a practice
    const std::vector<std::string> &textures;
};

/// `visits`: of one patient, in any order, which they keep. `patient`: stands in the place of the name, where there was a
/// patient. Each is a visit that readVisit takes. A copy of the copy is the same.
[[nodiscard]] std::vector<Visit> deidentified(std::vector<Visit> visits, const std::string &patient, const KnownContent &known);

/// That the copy can still tell who it is (translated): to be shown with it.
[[nodiscard]] std::string deidentifiedWarning();

} // namespace raphe
