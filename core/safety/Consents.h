// What the consents ask of one visit, and what follows from the answers: which are due, whether an answer is complete, and what
// stops. What was refused or taken back stops what it covered; work that needs a consent of its own at its place is to be asked
// for first. A no holds until the patient gives a yes. Plain functions of plain values; any thread.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace raphe {

/// Below the age of the content on that day (ISO 8601). The age from which a patient consents alone is for local law. An unknown
/// age does not count as under it.
[[nodiscard]] bool isUnderAge(const ConsentItems &items, const Visit &visit, const std::string &day);

/// Whether somebody else consents too: the patient is under age on the day of the visit, or an answer names a guardian.
[[nodiscard]] bool needsGuardian(const ConsentItems &items, const Visit &visit);

/// Whether that is the patient's own name, in whatever spelling: nobody is their own guardian.
[[nodiscard]] bool isPatient(const Visit &visit, const std::string &name);

/// Whether what the item covers is done at that place.
[[nodiscard]] bool covers(const ConsentItems &items, const ConsentItem &item, const Regions &regions, const Place &place);

/// The answer to the item that still holds on the visit's day; nullptr when it is to be asked. A yes lapses after the days of the
/// item, and when the patient has come of age since; a no does not lapse.
[[nodiscard]] const ConsentAnswer *answerThatHolds(const ConsentItems &items, const ConsentItem &item, const Visit &visit);

/// Whether it is asked of this patient: by the techniques that may be used (nothing: all of them), by where it hurts, and by age.
[[nodiscard]] bool concerns(const ConsentItems &items, const ConsentItem &item, const Regions &regions, const Visit &visit,
    const std::optional<std::set<std::string>> &techniques);

/// The items to be asked at this visit, in the order of the content: those that concern this patient, and to which no answer
/// holds.
[[nodiscard]] std::vector<const ConsentItem *> consentsDue(const ConsentItems &items, const Regions &regions, const Visit &visit,
    const std::optional<std::set<std::string>> &techniques);

/// Fails for an item that the content does not know; and for a yes without a chaperone offered where the item has one, without
/// the name of a guardian other than the patient where one is needed, and to what is done with adults only. `place` is used in
/// messages.
[[nodiscard]] Result<Done> checkConsent(
    const ConsentItems &items, const Visit &visit, const ConsentAnswer &answer, const std::string &place);
/// All answers of the visit. `file` is used in messages.
[[nodiscard]] Result<Done> checkConsents(const SafetyRules &rules, const Visit &visit, const std::string &file);

/// What an item says at the places that it covers.
struct ConsentVerdict {
    const ConsentItem *item = nullptr;
    std::optional<ConsentAnswer> no; // nothing: it is to be asked
    std::vector<const ConsentItem *> outside; // items of places with a yes to work from outside the body
};

struct ConsentVerdicts {
    std::vector<CautionVerdict> everywhere; // without a place
    std::vector<ConsentVerdict> atPlaces;
};

/// What the answers mean, and what is not answered. Keeping a record or pictures stops no work.
[[nodiscard]] ConsentVerdicts consentVerdicts(const ConsentItems &items, const Visit &visit);

/// What one of them says there; nothing where it does not hold. A no stops; a no to work from inside leaves what a yes covers
/// from outside. A thrust is asked for at joints only: elsewhere the question would be noise.
[[nodiscard]] std::optional<CautionVerdict> verdictAt(
    const ConsentItems &items, const ConsentVerdict &verdict, const Regions &regions, const Place &place);

} // namespace raphe
