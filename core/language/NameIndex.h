// All names of all structures, word by word, for reading them out of the middle of a line: whole names, names cut short
// ('ant scal'), with a left-out 'joint' or 'ligament', misspelt, or only begun ('rib'). Built once; immutable; any thread.
#pragma once

#include "core/language/WordList.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace raphe::language {

/// How freely a typed word may stand for a word of a name.
enum class Freedom { Exact, Cut, Misspelt };

/// The words of names that one typed word can stand for.
struct WordChoice {
    std::size_t first = 0; // words of the index from here on begin with what was typed ...
    std::size_t last = 0; // ... to here, not included
    bool hasExact = false; // the first of them is the very word
    struct Slip {
        std::size_t word;
        int edits;
    };
    std::vector<Slip> slips; // words that are a typing error away
    [[nodiscard]] bool none() const { return first == last && slips.empty(); }
};

struct NameFit {
    std::size_t structure = 0; // of Atlas::structures()
    double cost = 0; // 0: the very name
    int edits = 0; // typing errors
    bool leftOut = false; // a word that may be left out was
    bool fromStart = false; // the first typed word is the first word of the name
    std::size_t word = 0; // the word of the index that the first typed word stands for
    int missing = 0; // words of the name that were not typed, beyond those that may be left out
};

class NameIndex {
public:
    NameIndex(const Atlas &atlas, const WordList &list);

    [[nodiscard]] WordChoice choose(std::string_view word, Freedom freedom) const;
    /// The structures that have exactly this name; several when they share it. Order counts only where digits stand in it.
    [[nodiscard]] std::vector<std::size_t> whole(const std::vector<std::string_view> &words) const;
    /// Every structure with a name that holds all these words, its best name each, best first.
    [[nodiscard]] std::vector<NameFit> fits(const std::vector<const WordChoice *> &words) const;
    [[nodiscard]] bool isJoiner(std::string_view word) const;
    /// A name that is read as this structure and nothing else; the id when it has none.
    [[nodiscard]] std::string sureName(const Atlas &atlas, std::size_t structure) const;

    struct Begun {
        std::size_t structure = 0;
        std::string name;
    };
    /// Names whose words (without joiners, single blanks between them) start with these letters, in order of length.
    [[nodiscard]] std::vector<Begun> beginning(std::string_view folded, std::size_t most) const;

private:
    struct Name {
        std::size_t structure = 0;
        std::string text; // as it stands in the atlas
        int rank = 0; // English and what practitioners say, then Latin, then patients' words
        std::vector<std::size_t> words; // without joiners
    };
    void collect(const Atlas &atlas, const WordList &list);
    void add(std::size_t structure, const std::string &text, int rank);
    void index(const WordList &list);
    [[nodiscard]] bool fit(const Name &name, const std::vector<const WordChoice *> &words, NameFit &out) const;

    std::vector<std::string> m_words; // sorted
    std::vector<std::uint64_t> m_letters; // of each word, one bit a letter
    std::vector<bool> m_mayLeaveOut; // of each word
    std::vector<std::vector<std::size_t>> m_namesOf; // of each word
    std::vector<Name> m_names;
    std::vector<std::vector<std::string>> m_typed; // words of each name, until they are indexed
    std::unordered_map<std::string, std::vector<std::size_t>> m_whole; // key of a name -> names
    std::vector<std::string> m_joiners;
    std::vector<std::pair<std::string, std::size_t>> m_byText; // words of a name, and the name; sorted
};

} // namespace raphe::language
