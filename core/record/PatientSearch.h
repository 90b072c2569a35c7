// Finding a patient by a few letters of a name, a date of birth or a complaint, however they are typed: both what is
// searched and what is asked for are folded into plain words. Plain functions of plain values; any thread.
#pragma once

#include "core/record/PatientRecord.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// Lower case letters and digits without accents, single spaces between words. A word that is a date in digits, as
/// 5.3.1980, 05/03/1980 or 1980-03-05, keeps its points (a slash becomes one) and hyphens.
[[nodiscard]] std::string foldedWords(std::string_view text);

/// The words of a folded text, in its order.
[[nodiscard]] std::vector<std::string> splitWords(std::string_view folded);

/// What is searched for a patient: names, days of birth (1980-03-05, 05.03.1980, 5.3.1980, 05031980) and complaints,
/// folded.
[[nodiscard]] std::string searchText(const PatientRecord &record);

/// What was typed to find a patient; folded once for all of them. An empty one matches everybody.
class PatientQuery {
public:
    explicit PatientQuery(std::string_view typed) : m_words(splitWords(foldedWords(typed))) { }
    /// Whether every word occurs somewhere in the folded text.
    [[nodiscard]] bool matches(std::string_view folded) const;

private:
    std::vector<std::string> m_words;
};

} // namespace raphe
