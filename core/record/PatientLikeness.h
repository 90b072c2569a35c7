// How much two records look like one person, so that nobody is written down twice unseen. Only a hint for a person who
// looks at both. Plain functions of plain values; any thread.
#pragma once

#include "core/record/PatientRecord.h"

#include <string>
#include <vector>

namespace raphe {

/// What likeness looks at, prepared once for many comparisons.
struct LikenessKey {
    std::vector<std::vector<std::string>> names; // words of each name, sorted, each once
    std::vector<std::string> born;
};
[[nodiscard]] LikenessKey likenessKey(const PatientRecord &record);

/// How much two records look like one person: 0 to 1, the same either way round. The likeness of the names times a
/// factor for the birth dates (bornLikeness); with several names or dates the best counts.
/// Names: words are paired best first, in any order, so that a swapped first and last name costs nothing. A pair counts
/// 1 - edits / length of the longer word, and nothing below a half. The sum is divided by the number of words of the
/// shorter name, plus a half for each further word of the longer one. Only the first 8 words are looked at.
/// Our choice, no source.
[[nodiscard]] double likeness(const PatientRecord &a, const PatientRecord &b);
[[nodiscard]] double likeness(const LikenessKey &a, const LikenessKey &b);

/// 1 for the same birth date; 0.8 where one is missing, day and month are swapped or one digit differs; else 0.3.
/// Our choice, no source.
[[nodiscard]] double bornLikeness(const LikenessKey &a, const LikenessKey &b);

} // namespace raphe
