// What the visit map says, in plain words of the patient's language: sentences of at most 15 words, school grade 6 or below
// (measured, see Readability.h). Plain functions; nothing fails, any thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/base/Phrases.h"
#include "core/record/Visit.h"

#include <string>

namespace raphe {

/// A text of the map in the patient's language; `values` fill its names in braces.
[[nodiscard]] std::string mapText(
    const Phrases &phrases, const char *english, const std::vector<std::pair<std::string, std::string>> &values = {});

/// 'main buttock muscle, right side'.
[[nodiscard]] std::string plainPlace(const Phrases &phrases, const Atlas &atlas, const Place &place);
/// 'right side'; empty in the midline.
[[nodiscard]] std::string plainSide(const Phrases &phrases, Side side);
/// 'very sore', by tenderness 0 to 4; 'moves a bit less', by restriction 0 to 3.
[[nodiscard]] std::string plainTenderness(const Phrases &phrases, int grade);
[[nodiscard]] std::string plainRestriction(const Phrases &phrases, int grade);
/// 'Very sore, hardly moves. This is the pain you know.': no grades.
[[nodiscard]] std::string findingInPlainWords(const Phrases &phrases, const Finding &finding);
/// 'about 2 minutes'.
[[nodiscard]] std::string plainTime(const Phrases &phrases, int seconds);
/// With a capital at its beginning.
[[nodiscard]] std::string begun(const std::string &sentence);

} // namespace raphe
