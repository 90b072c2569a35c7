// What reading a typed line needs, indexed once: the names of the atlas and the words of the trade. Keeps a reference to the
// atlas, which must outlive it. Immutable, so it may be shared between threads.
#pragma once

#include "core/language/NameIndex.h"
#include "core/language/WordList.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace raphe {

class LineWords {
public:
    LineWords(const Atlas &atlas, WordList list);

    /// What a phrase of the trade can mean; a phrase has one meaning of each kind at most, movements aside.
    enum class Kind { Word, Texture, Device, Shared, Region, Movement, Move, UnclearMove };
    struct Meaning {
        Kind kind{};
        std::size_t index = 0; // LineWord for Word, else of the list in WordList
    };

    [[nodiscard]] const Atlas &atlas() const { return m_atlas; }
    [[nodiscard]] const WordList &list() const { return m_list; }
    [[nodiscard]] const language::NameIndex &names() const { return m_names; }
    /// How choices say a word: its first phrase; empty when the language has none.
    [[nodiscard]] const std::string &firstPhrase(LineWord word) const;
    /// nullptr when it is no phrase. The key is made of folded tokens with single blanks between them.
    [[nodiscard]] const std::vector<Meaning> *meanings(const std::string &key) const;
    [[nodiscard]] std::size_t longestPhrase() const { return m_longest; } // in tokens
    struct NearPhrase {
        std::string key;
        int edits = 0;
    };
    /// The phrases of a single word that are nearest to a misspelt one. Of a short phrase two letters may have changed places,
    /// one may be missing or doubled; another letter in its place makes another word ('lift' is not 'left', nor 'more' 'sore').
    [[nodiscard]] std::vector<NearPhrase> nearest(std::string_view word) const;

private:
    void add(const std::vector<std::string> &says, Meaning meaning);

    const Atlas &m_atlas;
    WordList m_list;
    language::NameIndex m_names;
    std::unordered_map<std::string, std::vector<Meaning>> m_phrases;
    std::vector<std::string> m_single; // phrases of one word, long enough to be misspelt
    std::size_t m_longest = 0;
};

} // namespace raphe
