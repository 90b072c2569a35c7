// The draft of a letter to another professional, composed from a visit: urgency and reason first, then the question, then what
// was asked, found, done, changed and planned, in trade terms with the side written out; never a diagnosis. Warning signs that
// are there come before all else. Answers that were given when nobody else could hear are left out, with all that follows from
// them. Content only; app/paint draws it. Plain values; any thread.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/examination/Comparing.h"
#include "core/examination/Examination.h"
#include "core/plan/Technique.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <string>

namespace raphe {

/// What a draft is composed with; all of it must outlive the call.
struct LetterSources {
    const SafetyRules &rules;
    const Regions &regions;
    const Examination &examination;
    const Techniques &techniques; // with those of the practice
    Reference reference; // whom usual ranges must be of
};

/// To nobody yet, with the urgency that the signs suggest. No part is empty. The visit was checked before (checkConditions,
/// checkWarnings, checkExamined). `written`: ISO 8601 date.
[[nodiscard]] Letter letterDraft(const LetterSources &sources, const Visit &visit, const std::string &written);

/// Whether the draft says something else by now than what was composed when the letter was kept.
[[nodiscard]] bool isOutdated(const Letter &kept, const Letter &draft);
/// The kept letter with what the draft says now: texts that nobody edited are the draft's, edited ones stay as they are beside
/// the draft's. Parts that the draft has no longer stay when they were edited. Addressee, urgency and dates stay.
[[nodiscard]] Letter composedAnew(const Letter &kept, const Letter &draft);

/// What stands on the letter besides itself.
struct LetterFacts {
    std::string practice;
    std::string letterhead; // several lines
    std::string practitioner;
    std::string patient;
    std::string born; // ISO 8601 date or empty
    std::string visited; // ISO 8601 date or empty
};
/// `practice` and `letterhead` are those of its settings.
[[nodiscard]] LetterFacts letterFacts(const Visit &visit, std::string practice, std::string letterhead);

} // namespace raphe
