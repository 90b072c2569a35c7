// All that a practice holds on one patient as one document, for who asks for a copy of the record: the record itself, every visit
// as it stands with its earlier versions and amendments, and who used the record when. It takes plain values, whatever file they
// come from. Content only; app/paint makes pages of it. Nothing fails; any thread.
#pragma once

#include "core/document/ClinicalNote.h"
#include "core/record/PatientRecord.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// A visit as the practice keeps it.
struct KeptVisit {
    NoteState state{};
    std::string document; // as it is kept, for what cannot be read as a visit
    std::optional<Visit> visit; // nothing: it cannot be read
    std::vector<NoteVersion> versions; // in the order of time
    std::vector<std::string> documents; // of the versions, one each; empty: the act keeps none
};

struct RecordAccess {
    std::int64_t madeAt = 0; // milliseconds since 1970, UTC
    std::string by;
    RecordAct act{};
};

struct RecordContent {
    PatientRecord patient;
    std::int64_t number = 0; // of the patient in the practice; 0: none
    std::vector<KeptVisit> visits; // oldest first
    std::vector<RecordAccess> accesses;
    std::string practice;
    std::string madeBy;
    std::int64_t madeAt = 0;
};

struct RecordsRequest {
    std::string title;
    std::string patient;
    std::string born;
    std::vector<NoteLine> heads;
    std::vector<std::string> words; // what it is, one paragraph each
    NotePart contents; // a line for each visit
    NotePart record; // of the patient
    /// Each visit as it stands, followed by its earlier versions, the newest of these first.
    std::vector<ClinicalNote> notes;
    NotePart accesses;
    std::string limits;
};

[[nodiscard]] RecordsRequest recordsRequest(const NoteKnowledge &known, const RecordContent &kept, NoteFor readers);

} // namespace raphe
