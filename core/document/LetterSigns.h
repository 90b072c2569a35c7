// The warning signs in a letter: those that are there and may be named, and what stops because of them. What was answered when
// nobody else could hear, and what was told at a visit that was moved, never stands in one. Plain values; any thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <string>
#include <vector>

namespace raphe {

struct LetterSign {
    const WarningSign *sign = nullptr; // of the rules
    const WarningAnswer *answer = nullptr; // of the visit
    /// Somebody else must still act on it: an emergency always, another one until the treating team knows of it or it was
    /// explained.
    [[nodiscard]] bool isForOthers() const;
};

/// Without the answers that a letter may not speak of, so that nothing that follows from them can come into it.
[[nodiscard]] Visit withoutPrivateAnswers(const WarningSigns &signs, Visit visit);

/// That are there, gravest first. Rules and visit must outlive them.
[[nodiscard]] std::vector<LetterSign> signsForLetter(const WarningSigns &signs, const Visit &visit);

/// From the gravest sign that somebody must act on: its level; before-treating is within days (our choice, no source). Without
/// one: routine when care is to be referred, else for information. The practitioner chooses.
[[nodiscard]] Urgency suggestedUrgency(const WarningSigns &signs, const Visit &visit);

/// 'single hot, swollen joint, at the right knee joint; ...'
[[nodiscard]] std::string signNames(const Atlas &atlas, const std::vector<LetterSign> &signs);
/// Three lines each: how urgent it is; what was asked and answered, and where; what was decided, why, and who was told. A
/// blank one between two signs.
[[nodiscard]] std::vector<std::string> signLines(const Atlas &atlas, const std::vector<LetterSign> &signs);
/// All hands-on work, or what the caution rules stop where.
[[nodiscard]] std::vector<std::string> stopLines(
    const SafetyRules &rules, const Atlas &atlas, const std::vector<LetterSign> &signs);

} // namespace raphe
