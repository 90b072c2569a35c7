// The other direction of Export.h: a record that another practice exported ("raphe-export", resources/schema/export.schema.json),
// read strictly and put into a practice as a new patient.
//
// What comes along: the patient's record, every visit in its state, and every version that was signed there, each letter by
// letter. What cannot come along is a signature: keys of another practice prove nothing here. So each act of the history is done
// again by the user who imports, now, and its reason says that it was taken over, who did it there, when it was entered and why.
// A signature becomes a late entry with the time of care (that of entry where none was given): it says who put these words into
// this record, not who gave the care. Drafts stay drafts; an amendment that was being written is one here.
// What stays behind: who opened or exported the record there, and that a visit which is still a draft was moved between patients.
// Keep the exported file if these matter.
#pragma once

#include "core/examination/KnownContent.h"
#include "core/record/Visit.h"
#include "core/store/Practice.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

class Atlas;

/// One act of a visit's history in the other practice.
struct ExportedAct {
    EntryKind kind{}; // Signed, Late, Amended, InError or Moved
    std::string author;
    std::string enteredAt; // ISO 8601, UTC
    std::string careAt; // as the author gave it; empty: the same
    std::string reason;
    std::string document; // as it was then; empty: of Moved
};

struct ExportedVisit {
    VisitState state{};
    Visit visit; // as it stands now
    std::string document; // the same, as the file has it
    std::vector<ExportedAct> history; // oldest first
};

struct ExportedRecord {
    PatientRecord patient;
    std::vector<ExportedVisit> visits; // oldest first
    std::size_t accesses = 0; // that stay behind
};

/// Fails with file and JSON pointer (of text that is no JSON: line and column) for anything that exportPatient does not write:
/// unknown fields and words, a record or a version of a visit that cannot be read, a state that does not follow from the history,
/// JSON that is nested deeper than any of it. Whether conditions, signs, movements and tests are known: see checkKnownContent.
[[nodiscard]] Result<ExportedRecord> readExport(std::string_view text, const std::string &file, const Atlas &atlas);

/// Fails with file and JSON pointer for what a visit of the record names and the program has no rules for.
[[nodiscard]] Result<Done> checkKnownContent(
    const SafetyRules &rules, const Examination &examination, const ExportedRecord &record, const std::string &file);

struct ImportedPatient {
    std::int64_t patient = 0;
    std::vector<std::int64_t> visits; // in the order of the export
};

/// Adds a new patient, also when there is one of that name: two records of one person can be merged. When it fails, what was
/// added is erased again, which leaves a tombstone in the history; after a kill or a power cut a part of it can be left.
[[nodiscard]] Result<ImportedPatient> importPatient(Practice &practice, const ExportedRecord &record);

} // namespace raphe
