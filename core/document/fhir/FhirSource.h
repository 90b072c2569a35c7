// All that a FHIR bundle of one visit is made of. Plain values; nothing is owned: what is referred to must outlive the call.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/document/fhir/FhirCodes.h"
#include "core/examination/Examination.h"
#include "core/plan/Technique.h"
#include "core/record/PatientRecord.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// Where the visit stands in the practice file; a visit file alone is a draft.
enum class FhirState {
    Draft,
    Signed,
    Amending, // signed, and an amendment is being written: what it says now is signed by nobody yet
    InError // entered in error: kept, and marked as such everywhere
};

enum class FhirAct { Signed, Late, Amended, InError };
inline constexpr WordTable<FhirAct, 4> fhirActWords{
    {{FhirAct::Signed, "signed"}, {FhirAct::Late, "late"}, {FhirAct::Amended, "amended"}, {FhirAct::InError, "in-error"}}};

/// One signed word on the visit.
struct FhirEntry {
    FhirAct act{};
    std::string author;
    std::int64_t madeAt = 0; // time of entry: milliseconds since 1970, UTC
    std::string careAt; // time of care as the author gave it, ISO 8601; empty when not told
    std::string reason; // of a late entry, an amendment, an error
};

/// What is known, beside the content.
struct FhirSource {
    const Atlas *atlas = nullptr; // these five are never nullptr
    const FhirCodes *codes = nullptr;
    const SafetyRules *rules = nullptr;
    const Examination *examination = nullptr;
    const Techniques *techniques = nullptr;
    Visit visit; // checked before (checkConditions, checkWarnings, checkExamined)

    const PatientRecord *record = nullptr; // nothing is said of contact and sex without it
    std::string practice; // its name; may be empty
    /// These three tell practice, patient and visit from all others, and never change: ids are made of them. Where one is empty,
    /// the name of the practice, name and birth date of the patient, or date and practitioner of the visit stand in for it.
    std::string practiceKey;
    std::string patientNumber; // as the practice counts; also given as an identifier
    std::string visitNumber;

    FhirState state = FhirState::Draft;
    std::vector<FhirEntry> entries; // in the order of time
    /// The visit as it was first signed: what an amendment left as it was stays 'final'. Without it all counts as amended.
    std::optional<Visit> asSigned;
    /// Of the practice's clock on the day of the visit, in minutes east of UTC; nothing: times of day are left out, since FHIR
    /// allows none without a zone.
    std::optional<int> utcOffset;
};

} // namespace raphe
