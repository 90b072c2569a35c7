#include "core/language/NameIndex.h"

#include "core/anatomy/NameSearch.h"
#include "core/language/Lexer.h"

#include <algorithm>
#include <bit>
#include <limits>
#include <set>

namespace raphe::language {

namespace {

// Costs in units of a typing error, as in NameSearch; our choice.
constexpr double cutCost = 0.1;
constexpr double orderCost = 0.05;
constexpr double leftOutCost = 0.04;
constexpr double rankCost = 0.01;
constexpr std::size_t leastCut = 3; // letters that a word may be cut short to
constexpr std::size_t leastSlip = 4; // letters below which no error is tolerated
constexpr std::size_t leastCutSlip = 6; // letters below which a word is not both cut and misspelt
constexpr std::size_t mostWords = 10; // in a name that is typed

int errorsAllowed(std::size_t letters)
{
    return letters < leastSlip ? 0 : letters <= 7 ? 1 : letters <= 9 ? 2 : 3;
}

std::uint64_t lettersOf(std::string_view word)
{
    std::uint64_t letters = 0;
    for (const char c : word)
        letters |= std::uint64_t{1} << (static_cast<unsigned char>(c) % 64U);
    return letters;
}

bool hasDigit(std::string_view word)
{
    return !word.empty() && word.front() >= '0' && word.front() <= '9';
}

// One key for a name in any order of its words, unless a digit stands in it.
template <class Words> std::string keyOf(const Words &words)
{
    std::vector<std::string_view> sorted(words.begin(), words.end());
    if (std::none_of(sorted.begin(), sorted.end(), hasDigit))
        std::sort(sorted.begin(), sorted.end());
    std::string key;
    for (const std::string_view word : sorted)
        key.append(word).append(1, ' ');
    return key;
}

} // namespace

NameIndex::NameIndex(const Atlas &atlas, const WordList &list) : m_joiners(list.joiners)
{
    collect(atlas, list);
    index(list);
}

void NameIndex::collect(const Atlas &atlas, const WordList &list)
{
    std::unordered_map<std::string, std::size_t> places;
    for (std::size_t i = 0; i < atlas.structures().size(); ++i) {
        const Structure &s = atlas.structures()[i];
        places.emplace(s.id.value, i);
        add(i, s.names.english, 0);
        for (const std::string &synonym : s.names.synonyms)
            add(i, synonym, 0);
        add(i, s.names.latin, 1);
        if (const auto plain = s.names.plain.find(list.language); plain != s.names.plain.end())
            add(i, plain->second, 2);
        add(i, s.id.value, 3);
    }
    for (const WordList::Says &shortForm : list.shortForms)
        for (const std::string &text : shortForm.says)
            add(places.at(shortForm.structures.front().value), text, 0);
}

void NameIndex::add(std::size_t structure, const std::string &text, int rank)
{
    std::vector<std::string> words;
    for (Token &token : tokensOf(text))
        if ((token.kind == TokenKind::Word || token.kind == TokenKind::Number) && !isJoiner(token.text))
            words.push_back(std::move(token.text));
    if (words.empty())
        return;
    m_names.push_back({structure, text, rank, {}});
    m_typed.push_back(std::move(words));
}

void NameIndex::index(const WordList &list)
{
    std::vector<std::string_view> all;
    for (const auto &words : m_typed)
        all.insert(all.end(), words.begin(), words.end());
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    m_words.assign(all.begin(), all.end());
    std::unordered_map<std::string_view, std::size_t> places;
    for (std::size_t i = 0; i < m_words.size(); ++i) {
        places.emplace(m_words[i], i);
        m_letters.push_back(lettersOf(m_words[i]));
        m_mayLeaveOut.push_back(std::find(list.leftOut.begin(), list.leftOut.end(), m_words[i]) != list.leftOut.end());
    }
    m_namesOf.resize(m_words.size());
    m_whole.reserve(m_names.size());
    for (std::size_t name = 0; name < m_names.size(); ++name) {
        std::string text;
        for (const std::string &word : m_typed[name]) {
            const std::size_t at = places.at(word);
            m_names[name].words.push_back(at);
            if (m_namesOf[at].empty() || m_namesOf[at].back() != name)
                m_namesOf[at].push_back(name);
            text.append(text.empty() ? "" : " ").append(word);
        }
        m_whole[keyOf(m_typed[name])].push_back(name);
        if (m_names[name].rank < 2)
            m_byText.emplace_back(std::move(text), name);
    }
    std::sort(m_byText.begin(), m_byText.end());
    m_typed.clear();
}

bool NameIndex::isJoiner(std::string_view word) const
{
    return std::find(m_joiners.begin(), m_joiners.end(), word) != m_joiners.end();
}

WordChoice NameIndex::choose(std::string_view word, Freedom freedom) const
{
    WordChoice out;
    const auto from = std::lower_bound(m_words.begin(), m_words.end(), word);
    out.hasExact = from != m_words.end() && *from == word;
    auto to = out.hasExact ? from + 1 : from;
    if (freedom != Freedom::Exact && word.size() >= leastCut && !hasDigit(word))
        while (to != m_words.end() && std::string_view(*to).starts_with(word))
            ++to;
    out.first = static_cast<std::size_t>(from - m_words.begin());
    out.last = static_cast<std::size_t>(to - m_words.begin());
    const int most = errorsAllowed(word.size());
    if (freedom != Freedom::Misspelt || out.hasExact || most == 0)
        return out;
    const std::uint64_t wanted = lettersOf(word);
    for (std::size_t i = 0; i < m_words.size(); ++i) {
        const std::uint64_t lacking = wanted & ~m_letters[i]; // each letter that the word lacks takes an edit
        if (lacking != 0 && std::popcount(lacking) > most)
            continue;
        if (m_words[i].size() < leastSlip || hasDigit(m_words[i]))
            continue;
        const Edits edits = editsBetween(word, m_words[i], most);
        const int needed = word.size() >= leastCutSlip ? std::min(edits.whole, edits.begun) : edits.whole;
        if (needed <= most)
            out.slips.push_back({i, needed});
    }
    return out;
}

std::vector<std::size_t> NameIndex::whole(const std::vector<std::string_view> &words) const
{
    std::vector<std::size_t> out;
    const auto found = words.empty() ? m_whole.end() : m_whole.find(keyOf(words));
    if (found == m_whole.end())
        return out;
    int best = std::numeric_limits<int>::max();
    for (const std::size_t name : found->second)
        best = std::min(best, m_names[name].rank);
    for (const std::size_t name : found->second)
        if (m_names[name].rank == best && std::find(out.begin(), out.end(), m_names[name].structure) == out.end())
            out.push_back(m_names[name].structure);
    return out;
}

// Each typed word takes the best word of the name that no earlier one took.
bool NameIndex::fit(const Name &name, const std::vector<const WordChoice *> &words, NameFit &out) const
{
    if (name.words.size() < words.size() || name.words.size() > 64)
        return false;
    std::uint64_t taken = 0;
    std::size_t before = 0;
    out = {};
    out.structure = name.structure;
    out.cost = rankCost * name.rank;
    for (const WordChoice *choice : words) {
        double best = std::numeric_limits<double>::infinity();
        std::size_t at = 0;
        int edits = 0;
        for (std::size_t i = 0; i < name.words.size(); ++i) {
            if ((taken >> i & 1U) != 0)
                continue;
            const std::size_t word = name.words[i];
            double cost = std::numeric_limits<double>::infinity();
            int slips = 0;
            if (word >= choice->first && word < choice->last)
                cost = choice->hasExact && word == choice->first ? 0 : cutCost;
            for (const WordChoice::Slip &slip : choice->slips)
                if (slip.word == word)
                    cost = slips = slip.edits;
            if (cost < best) {
                best = cost;
                at = i;
                edits = slips;
            }
        }
        if (best == std::numeric_limits<double>::infinity())
            return false;
        if (choice == words.front()) {
            out.word = name.words[at];
            out.fromStart = at == 0;
        }
        taken |= std::uint64_t{1} << at;
        if (at < before) {
            if (std::any_of(name.words.begin(), name.words.end(), [&](std::size_t word) { return hasDigit(m_words[word]); }))
                return false;
            out.cost += orderCost;
        }
        before = at;
        out.cost += best;
        out.edits += edits;
    }
    for (std::size_t i = 0; i < name.words.size(); ++i)
        if ((taken >> i & 1U) == 0) {
            const bool mayBe = m_mayLeaveOut[name.words[i]];
            out.missing += mayBe ? 0 : 1;
            out.leftOut = out.leftOut || mayBe;
            out.cost += leftOutCost;
        }
    return true;
}

std::vector<NameFit> NameIndex::fits(const std::vector<const WordChoice *> &words) const
{
    if (words.empty() || words.size() > mostWords)
        return {};
    // The rarest word leads: only names that hold it are looked at.
    const auto namesWith = [&](const WordChoice &choice, auto use) {
        for (std::size_t word = choice.first; word < choice.last; ++word)
            for (const std::size_t name : m_namesOf[word])
                use(name);
        for (const WordChoice::Slip &slip : choice.slips)
            for (const std::size_t name : m_namesOf[slip.word])
                use(name);
    };
    const WordChoice *rarest = words.front();
    std::size_t fewest = std::numeric_limits<std::size_t>::max();
    for (const WordChoice *choice : words) {
        std::size_t count = 0;
        namesWith(*choice, [&](std::size_t) { ++count; });
        if (count < fewest) {
            fewest = count;
            rarest = choice;
        }
    }
    std::vector<NameFit> out;
    namesWith(*rarest, [&](std::size_t name) {
        NameFit found;
        if (fit(m_names[name], words, found))
            out.push_back(found);
    });
    const auto better = [](const NameFit &a, const NameFit &b) {
        return std::tuple(a.missing, a.leftOut, a.edits, a.cost, a.structure)
            < std::tuple(b.missing, b.leftOut, b.edits, b.cost, b.structure);
    };
    std::sort(out.begin(), out.end(), better);
    std::set<std::size_t> seen;
    std::erase_if(out, [&](const NameFit &f) { return !seen.insert(f.structure).second; });
    return out;
}

std::string NameIndex::sureName(const Atlas &atlas, std::size_t structure) const
{
    const Structure &s = atlas.structures()[structure];
    std::vector<std::string> texts{s.names.english};
    texts.insert(texts.end(), s.names.synonyms.begin(), s.names.synonyms.end());
    for (const std::string &text : texts) {
        std::vector<std::string> words;
        for (const Token &token : tokensOf(text))
            if (!isJoiner(token.text) && (token.kind == TokenKind::Word || token.kind == TokenKind::Number))
                words.push_back(token.text);
        // A comma would end the clause, and a single letter or digit could be read as a side or a grade.
        if (words.size() > 1 || (words.size() == 1 && words.front().size() > 4))
            if (text.find(',') == std::string::npos && whole({words.begin(), words.end()}) == std::vector{structure})
                return text;
    }
    return s.id.value;
}

std::vector<NameIndex::Begun> NameIndex::beginning(std::string_view folded, std::size_t most) const
{
    std::vector<Begun> out;
    std::set<std::size_t> seen;
    const auto from = std::lower_bound(
        m_byText.begin(), m_byText.end(), folded, [](const auto &entry, std::string_view text) { return entry.first < text; });
    for (auto it = from; it != m_byText.end() && it->first.starts_with(folded); ++it)
        out.push_back({m_names[it->second].structure, m_names[it->second].text});
    std::stable_sort(out.begin(), out.end(), [](const Begun &a, const Begun &b) { return a.name.size() < b.name.size(); });
    std::erase_if(out, [&](const Begun &b) { return !seen.insert(b.structure).second; });
    if (out.size() > most)
        out.erase(out.begin() + static_cast<std::ptrdiff_t>(most), out.end());
    return out;
}

} // namespace raphe::language
