// What patients read, by id: content of resources/intake/patient-texts.json, read strictly. Plain values; any thread.
#pragma once

#include "core/base/Phrases.h"
#include "core/base/Result.h"
#include "core/base/Words.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace raphe {

/// Who shows it: the printed form before arrival, the screen that the patient is given, or both.
enum class TextUse { Form, PatientMode, Both };
inline constexpr WordTable<TextUse, 3> textUseWords{
    {{TextUse::Form, "form"}, {TextUse::PatientMode, "patient-mode"}, {TextUse::Both, "both"}}};

struct PatientText {
    std::string id;
    std::string text; // may hold names in braces, such as {place}, to be filled in
    TextUse use{};
};

struct PatientTexts {
    std::vector<PatientText> texts;

    /// nullptr when there is none.
    [[nodiscard]] const PatientText *find(std::string_view id) const;
    /// Inside guarded() only: throws an Error that names the id when there is none.
    [[nodiscard]] const std::string &at(std::string_view id) const;
};

/// The text with a value in place of each name in braces.
[[nodiscard]] std::string filled(std::string text, const std::vector<std::pair<std::string, std::string>> &values);

/// Unknown fields, words and names in braces, duplicates and empty texts are errors with file and JSON pointer.
[[nodiscard]] Result<PatientTexts> readPatientTexts(std::string_view text);
[[nodiscard]] PatientTexts inLanguage(PatientTexts texts, const Phrases &phrases);
/// Those that are built into the program, in English.
[[nodiscard]] Result<PatientTexts> readEmbeddedPatientTexts();

} // namespace raphe
