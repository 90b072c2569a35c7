// Finds structures by any of their names (English, Latin, plain in each language, what practitioners say), with typing
// errors. Built once from the atlas, keeps no reference to it; immutable, so it may be shared between threads.
#pragma once

#include "core/anatomy/Atlas.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace raphe {

struct NameHit {
    StructureId structure;
    std::string name; // the name that matched best
    double cost = 0; // 0 is the very name; each typing error costs 1
};

class NameSearch {
public:
    explicit NameSearch(const Atlas &atlas);

    /// Best first, each structure once; empty when nothing is near enough. Case, accents and punctuation do not count;
    /// words may come in any order, be left out, begun only, or run together.
    [[nodiscard]] std::vector<NameHit> find(std::string_view typed, std::size_t most) const;

private:
    struct Name {
        std::size_t structure = 0; // of m_structures
        std::string text; // as it stands in the atlas
        std::size_t words = 0; // how many different ones it has
        double rank = 0; // added to the cost: a technical name before a patient's word
    };
    struct Word {
        std::string text;
        std::vector<std::size_t> names; // those that hold it
    };
    struct Vocabulary {
        std::vector<Word> words;
        std::vector<std::uint64_t> letters; // which letters each word has, one bit a letter: tells most words apart at once
        std::unordered_map<std::string, std::size_t> index;
        void add(const std::string &text, std::size_t name);
        /// Calls use(name, cost) for each name that holds a word near enough to what was typed.
        template <class F> void forEachNear(const std::string &typed, F use) const;
    };
    void add(std::size_t structure, const std::string &text, double rank);

    std::vector<StructureId> m_structures;
    std::vector<Name> m_names;
    Vocabulary m_words;
    Vocabulary m_joined; // all words of a name run together
};

/// Lower case letters and digits without accents, single spaces between words.
[[nodiscard]] std::string foldedName(std::string_view text);

/// How far apart two words are, in edits: insert, delete, replace, or swap two neighbours, no letter edited twice (optimal
/// string alignment; Damerau 1964, Commun ACM 7:171). More than `most` are most + 1.
struct Edits {
    int whole = 0; // to the whole word
    int begun = 0; // to the nearest beginning of it, the whole among them
};
[[nodiscard]] Edits editsBetween(std::string_view typed, std::string_view word, int most);

} // namespace raphe
