// What a visit still lacks to stand as a health record, and where to go for it: nothing is barred by it. Plain function of plain
// values; nothing fails, any thread.
#pragma once

#include "core/document/ClinicalNote.h"

#include <string>
#include <vector>

namespace raphe {

/// Where in the visit something is put in.
enum class VisitStation { Patient, Intake, WarningSigns, Consent, Examination, Treatment, Retest, Close };

struct MissingItem {
    enum class Kind {
        Patient, // or birth date
        Date,
        Practitioner,
        Complaint,
        Pain, // no number
        WhereItHurts,
        NotConfirmed, // taken over from an earlier visit
        WarningSign, // not asked
        Decision, // a sign is there, and nothing was decided
        Consent,
        Findings, // none at all
        Side,
        StepDone, // how much of a step was done
        AdverseAnswer, // what was done about it
        Retest,
        Impression,
        Plan,
        Told, // what to expect, and when to call whom
        Review // the agreed visits are over
    };
    Kind kind{};
    VisitStation where{};
    std::string text; // one sentence
    bool operator==(const MissingItem &) const = default;
};

/// In the order of a visit. Consents are those of the examination, of where it hurts and of what was worked; a retest is missed
/// after work only. When all work is stopped by a warning sign nothing is missed but what was asked and decided. `earlier`: as in
/// NoteGiven.
[[nodiscard]] std::vector<MissingItem> completenessOf(
    const NoteKnowledge &known, const Visit &visit, const std::vector<EarlierVisit> &earlier);

/// 'warning signs', 'close of the visit'.
[[nodiscard]] std::string stationInWords(VisitStation station);

} // namespace raphe
