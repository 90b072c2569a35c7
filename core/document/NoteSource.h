// What the parts of a note are made of, and the parts, each composed by itself. For the composer of notes only.
#pragma once

#include "core/document/ClinicalNote.h"

#include <string>
#include <vector>

namespace raphe {

/// Keeps references. The visit is without what the readers of the note are not to have.
struct NoteSource {
    const NoteKnowledge &known;
    const Visit &visit;
    const NoteGiven &given;
    const Visit *previous = nullptr; // the newest earlier visit that is not in error

    [[nodiscard]] const Atlas &atlas() const { return known.regions.atlas(); }
    /// 'RIGHT gluteus maximus', 'L4/5, midline'.
    [[nodiscard]] std::string named(const Place &place) const;
    /// Several, divided by semicolons.
    [[nodiscard]] std::string named(const std::vector<Place> &places) const;

    /// 'as on 2026-11-12, not asked again' for a day before the visit's, empty for the visit's own day; without a day that it was
    /// not confirmed.
    [[nodiscard]] std::string asked(const std::string &day) const;
    /// The same of what has no day of asking and stood in the visit before too.
    [[nodiscard]] std::string unasked(bool stoodBefore) const;
    /// 'the same words as on 2026-11-12'.
    [[nodiscard]] std::string sameWords(bool areTheSame) const;
};

[[nodiscard]] NotePart subjectivePart(const NoteSource &source);
[[nodiscard]] NotePart objectivePart(const NoteSource &source);
[[nodiscard]] NotePart assessmentPart(const NoteSource &source);
[[nodiscard]] NotePart planPart(const NoteSource &source);
[[nodiscard]] NotePart goalsPart(const NoteSource &source);
[[nodiscard]] NotePart lettersPart(const NoteSource &source);
[[nodiscard]] NotePart signaturesPart(const NoteSource &source);

/// What the readers may have of it.
[[nodiscard]] Visit visitFor(NoteFor readers, const SafetyRules &rules, Visit visit);
[[nodiscard]] std::string reactionInWords(Reaction reaction);
/// Times of the first and the last moment, 'HH:MM:SS to HH:MM:SS'; empty: none is known.
[[nodiscard]] std::string timesOfExamination(const Visit &visit);
[[nodiscard]] std::string timesOfTreatment(const Visit &visit);

} // namespace raphe
