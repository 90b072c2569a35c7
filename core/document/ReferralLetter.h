// What stands in the letter to the licensed clinician who takes over because of warning signs: what was asked, seen and decided,
// never a diagnosis. Answers that were given when nobody else could hear are left out, with all that follows from them. Content
// only; app/paint draws it. Plain values; any thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/base/Result.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <string>
#include <vector>

namespace raphe {

struct LetterLine {
    std::string label; // empty: the text stands alone
    std::string text;
};

struct LetterPart {
    std::string title;
    std::vector<LetterLine> lines; // not empty
};

struct ReferralLetter {
    std::string title;
    std::vector<LetterLine> heads; // patient, dates, practitioner
    std::vector<LetterPart> parts;
    std::string limits; // what the letter is not
    std::string signature;
};

/// Fails (NotAllowed) when no sign is there that the letter may name. The visit was checked before (checkConditions,
/// checkWarnings); `file` is used in messages.
[[nodiscard]] Result<ReferralLetter> referralLetter(
    const SafetyRules &rules, const Atlas &atlas, const Visit &visit, const std::string &file);

} // namespace raphe
