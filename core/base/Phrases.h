// The words of the language that a patient reads, whatever the program itself speaks. A text is looked up by its English, in the
// files of resources/translations. Immutable after it is made, so it may be shared between threads.
#pragma once

#include "core/base/Words.h"

#include <memory>
#include <string>

class QTranslator;

namespace raphe {

enum class Language { English, German, Spanish };
inline constexpr WordTable<Language, 3> languageWords{
    {{Language::English, "en"}, {Language::German, "de"}, {Language::Spanish, "es"}}};

class Phrases {
public:
    explicit Phrases(Language language = Language::English);

    [[nodiscard]] Language language() const { return m_language; }
    /// 'en', 'de', 'es'.
    [[nodiscard]] std::string code() const { return std::string(wordOf(languageWords, m_language)); }
    /// Whether there is a translation; English has all.
    [[nodiscard]] bool has(const char *context, const std::string &english) const;
    /// The English itself where there is no translation; a test sees that there is one of all that patients read.
    [[nodiscard]] std::string say(const char *context, const std::string &english) const;
    /// '25 November 2026'; empty when it is no ISO 8601 date.
    [[nodiscard]] std::string longDate(const std::string &iso) const;

private:
    Language m_language;
    std::shared_ptr<const QTranslator> m_translator; // none in English
};

} // namespace raphe
