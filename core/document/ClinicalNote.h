// The clinical note of one visit, problem-oriented: what the patient told, what was examined, what the practitioner makes of it,
// what was done and planned, the goals, and who signed what when. It is composed from the record alone: nothing stands in it that
// was not written down, but for the program's own order of possible sources and its comparisons, which are said to be its own.
// What was taken over from an earlier visit and not asked again says since when it stands so. Content only; noteText makes plain
// text of it, app/paint pages. Plain values; nothing fails, any thread.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/document/NoteParts.h"
#include "core/examination/Examination.h"
#include "core/plan/NextVisit.h"
#include "core/plan/Technique.h"
#include "core/reasoning/Suggestion.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What a note needs to name things. Keeps references.
struct NoteKnowledge {
    const Regions &regions; // with their atlas and drawings
    const SafetyRules &rules;
    const Examination &examination;
    const Techniques &techniques; // the practice's own among them
};

/// How the visit stands in the practice. Draft: also a visit file, which nobody signed. Amending: signed, and what is read now is
/// an amendment that is not.
enum class NoteState { Draft, Signed, Amending, InError };

/// The practitioner's own record has everything. A copy for others leaves out what was answered when nobody else could hear, with
/// what was minded because of it; words that somebody typed elsewhere stay.
enum class NoteFor { Record, Others };

/// What was done to a patient's record.
enum class RecordAct { Opened, Signed, Late, Amended, InError, Moved, Merged, Erased, Exported, Restored, Other };

/// One recorded act on a visit.
struct NoteVersion {
    std::int64_t entry = 0; // its number in the history of the practice; 0: none
    RecordAct act{};
    std::string author;
    std::int64_t enteredAt = 0; // milliseconds since 1970, UTC
    std::string careAt; // time of care as the author gave it, ISO 8601; empty: the visit's
    std::string reason;
    std::optional<Visit> visit; // as it was signed then; nothing: the act keeps none, or it cannot be read
};

/// What is known beside the visit.
struct NoteGiven {
    NoteState state = NoteState::Draft;
    NoteFor readers = NoteFor::Record;
    std::vector<NoteVersion> versions; // in the order of time
    std::vector<EarlierVisit> earlier; // the patient's visits before this one, newest first
    std::vector<Suggestion> explain; // as Reasons has it, best first; empty: not reckoned
    double unexplained = 0; // as Reasons has it
    bool lettersInFull = false; // else to whom, how urgent, why and what is asked
};

struct ClinicalNote {
    std::string title;
    std::string patient; // for the head of every page
    std::string born; // ISO 8601 date or empty
    std::string date; // of the visit
    std::string state; // in words for every page: 'DRAFT: NOT SIGNED'; empty: signed
    std::vector<NoteLine> heads;
    std::vector<NotePart> parts; // subjective, objective, assessment, plan, goals, letters; of a draft what is not complete
    NotePart signatures;
    std::string limits;
};

/// So many of the program's possible sources stand in a note; our choice.
inline constexpr std::size_t sourcesInNote = 3;

[[nodiscard]] ClinicalNote clinicalNote(const NoteKnowledge &known, const Visit &visit, const NoteGiven &given);

/// What the note of the one visit says differently from that of the other, one sentence each; nothing when both are equal.
[[nodiscard]] std::vector<std::string> noteChanges(
    const NoteKnowledge &known, const Visit &before, const Visit &after, NoteFor readers);

/// 'signed', 'opened the record': to follow a name.
[[nodiscard]] std::string recordActInWords(RecordAct act);
/// '2026-11-12 14:05 (UTC+01:00)', in the zone of the computer.
[[nodiscard]] std::string momentInRecord(std::int64_t milliseconds);
/// The sentence that stands under every page.
[[nodiscard]] std::string recordLimits();

} // namespace raphe
