// Phrases in a line about work: the words that it begins with, and the techniques that it names. Plain functions; any thread.
#pragma once

#include "core/language/Lexer.h"
#include "core/language/WordList.h"
#include "core/plan/Technique.h"

#include <cstddef>
#include <string>
#include <vector>

namespace raphe {

/// A comma, a colon, a full stop: what parts a line.
[[nodiscard]] bool isStop(const language::Token &token);

/// How many tokens the words for work take at the beginning; 0: it does not begin with one.
[[nodiscard]] std::size_t workBeginning(const std::vector<language::Token> &line, const WordList::Work &words);

struct NamedTechnique {
    std::size_t begin = 0; // tokens
    std::size_t end = 0;
    const Technique *technique = nullptr;
    bool isName = false; // its whole name, before which another's short form gives way
    [[nodiscard]] std::size_t size() const { return end - begin; }
};

/// The techniques that are named from the token `from` on. Whole words; the longest phrase wins, and what stands within it says
/// nothing by itself.
[[nodiscard]] std::vector<NamedTechnique> namedTechniques(
    const std::vector<language::Token> &line, std::size_t from, const Techniques &techniques);

/// Those with this word in a phrase that says them.
[[nodiscard]] std::vector<const Technique *> techniquesWith(const std::string &word, const Techniques &techniques);

} // namespace raphe
