// Reads the name of a structure out of the middle of a line: the longest name wins, and a name that fits several structures
// names them all. One object a line; keeps references to tokens and words, which must outlive it.
#pragma once

#include "core/language/Lexer.h"
#include "core/language/LineWords.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace raphe::language {

struct PhraseFound {
    std::size_t end = 0; // token after it
    const std::vector<LineWords::Meaning> *meanings = nullptr;
    std::string key;
};

enum class NameHow { Whole, Short, Misspelt, Begun };

struct NameFound {
    std::size_t end = 0; // token after it
    NameHow how{};
    std::vector<std::size_t> structures; // likeliest first
    bool isSure = false; // the first of them is meant
    int edits = 0;
};

class NameReader {
public:
    NameReader(const std::vector<Token> &tokens, const LineWords &words);

    /// The longest phrase of the trade that starts at this token.
    [[nodiscard]] const std::optional<PhraseFound> &phraseAt(std::size_t token) const { return m_phrases[token]; }
    /// The name that starts at this token; nothing where none does.
    [[nodiscard]] std::optional<NameFound> nameAt(std::size_t token) const;

private:
    struct Window {
        std::vector<std::size_t> tokens; // of its words, joiners left out
        std::vector<std::size_t> ends; // of each, the token after it
    };
    [[nodiscard]] Window windowAt(std::size_t token) const;
    [[nodiscard]] std::optional<PhraseFound> findPhrase(std::size_t token) const;
    [[nodiscard]] std::optional<NameFound> whole(const Window &window) const;
    [[nodiscard]] std::optional<NameFound> shortened(const Window &window, std::size_t longerThan) const;
    [[nodiscard]] std::optional<NameFound> misspelt(const Window &window, std::size_t longerThan) const;
    [[nodiscard]] std::optional<NameFound> begun(const Window &window) const;
    [[nodiscard]] bool mayBeCut(std::size_t token, const Window &window) const;
    [[nodiscard]] const WordChoice &choice(std::size_t token, Freedom freedom) const;
    [[nodiscard]] bool isTechnical(std::size_t structure) const;

    const std::vector<Token> &m_tokens;
    const LineWords &m_words;
    std::vector<std::optional<PhraseFound>> m_phrases;
    mutable std::vector<std::array<std::optional<WordChoice>, 3>> m_choices; // of each token, for each freedom, when asked for
};

} // namespace raphe::language
