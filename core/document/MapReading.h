// How hard a visit map is to read, in English: all that the program composes and all that the practitioner wrote as advice. Left
// out are the names of people, what stands in the patient's or the record's own words, and the legal line. Nothing fails.
#pragma once

#include "core/document/Readability.h"
#include "core/document/VisitMap.h"

namespace raphe {

[[nodiscard]] std::vector<std::string> textsOf(const VisitMap &map);
/// The names of the places count as one syllable a word; they are listed. No words for a map in another language.
[[nodiscard]] ReadingGrade gradeOf(const Readability &readability, const VisitMap &map);

} // namespace raphe
