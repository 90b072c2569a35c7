// How hard an English text is to read: the Flesch-Kincaid grade, the school year in the United States that is needed,
// grade = 0.39 x words / sentences + 11.8 x syllables / words - 15.59
// (Kincaid, Fishburne, Rogers, Chissom 1975, Naval Technical Training Command research branch report 8-75; from memory).
// Syllables are counted by rules, with the words that these get wrong in resources/readability.json, always on the hard side: a
// sentence ends at . ! or ? or with its text, a hyphenated word is one word, a number counts with the syllables of its spoken
// form.
#pragma once

#include "core/base/Result.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

struct ReadingGrade {
    double grade = 0; // 0 of no words
    int sentences = 0;
    int words = 0;
    int syllables = 0;
    int longest = 0; // words of the longest sentence
    std::string longestSentence;
    std::vector<std::string> excepted; // the names that were not counted at full length, each once
};

class Readability {
public:
    double limit = 6; // the highest grade of a page for patients
    int longestSentence = 15; // words

    /// Of texts one after the other; each ends its sentence. A name (as written there, capitals aside) counts as one word of one
    /// syllable; those of the content are known to all texts.
    [[nodiscard]] ReadingGrade gradeOf(const std::vector<std::string> &texts, const std::vector<std::string> &names = {}) const;
    [[nodiscard]] int syllablesOf(const std::string &word) const;

private:
    friend Result<Readability> readReadability(std::string_view text);
    std::map<std::string, int> m_odd;
    std::map<std::string, int> m_numberWords;
    std::vector<std::string> m_names;
};

/// Unknown fields and counts that cannot be are errors with file and JSON pointer.
[[nodiscard]] Result<Readability> readReadability(std::string_view text);
/// Built into the program.
[[nodiscard]] Result<Readability> readEmbeddedReadability();

} // namespace raphe
