#include "core/anatomy/NameSearch.h"

#include <QString>

#include <algorithm>
#include <array>
#include <bit>
#include <limits>
#include <set>
#include <tuple>

namespace raphe {

namespace {

constexpr double tooFar = std::numeric_limits<double>::infinity();
constexpr std::size_t longestWord = 48; // letters; longer words are cut, in names and in what is typed
// Costs in units of a typing error; our choice, tried on misspelt names (NameSearchTest).
constexpr double begunCost = 0.3; // the typed word is only the beginning
constexpr double restCost = 0.12; // for each word of the name that was not typed
constexpr double joinedCost = 0.1; // words run together

std::vector<std::string> wordsOf(const std::string &folded)
{
    std::vector<std::string> words;
    std::size_t start = 0;
    while (start < folded.size()) {
        const std::size_t end = std::min(folded.find(' ', start), folded.size());
        words.push_back(folded.substr(start, std::min(end - start, longestWord)));
        start = end + 1;
    }
    return words;
}

// The shorter the word, the fewer errors leave it recognisable; our choice.
int errorsAllowed(std::size_t letters)
{
    return letters <= 3 ? 0 : letters <= 5 ? 1 : letters <= 9 ? 2 : 3;
}

double costOf(const std::string &typed, const std::string &word, int most)
{
    if (word.starts_with(typed))
        return word.size() == typed.size() ? 0 : begunCost;
    if (most == 0)
        return tooFar;
    const Edits edits = editsBetween(typed, word, most);
    double cost = tooFar;
    if (edits.whole <= most)
        cost = edits.whole;
    if (edits.begun <= most)
        cost = std::min(cost, edits.begun + begunCost);
    return cost;
}

std::uint64_t lettersOf(const std::string &word)
{
    std::uint64_t letters = 0;
    for (const char c : word)
        letters |= std::uint64_t{1} << (static_cast<unsigned char>(c) % 64U);
    return letters;
}

} // namespace

std::string foldedName(std::string_view text)
{
    std::string out;
    bool gap = false;
    const QString apart = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))
                              .replace(QChar(0x00DF), QStringLiteral("ss"))
                              .toLower()
                              .normalized(QString::NormalizationForm_KD);
    for (const QChar c : apart) {
        if (c.category() == QChar::Mark_NonSpacing || c.category() == QChar::Other_Format || c == QLatin1Char('\''))
            continue;
        if (!c.isLetterOrNumber()) {
            gap = true;
            continue;
        }
        if (gap && !out.empty())
            out += ' ';
        gap = false;
        out += QString(c).toStdString();
    }
    return out;
}

// Only cells within `most` of the diagonal can hold `most` edits or fewer; the others are never looked at.
Edits editsBetween(std::string_view typed, std::string_view word, int most)
{
    const int n = static_cast<int>(std::min(typed.size(), longestWord));
    const int m = static_cast<int>(std::min(word.size(), longestWord));
    const int tooMany = most + 1;
    if (n > m + most)
        return {tooMany, tooMany};
    std::array<std::array<int, longestWord + 2>, 3> rows; // the last three rows of the table, by turns
    for (int j = 0; j <= std::min(m, most) + 1; ++j)
        rows[0][static_cast<std::size_t>(j)] = std::min(j, tooMany);
    for (int i = 1; i <= n; ++i) {
        auto &row = rows[static_cast<std::size_t>(i % 3)];
        const auto &above = rows[static_cast<std::size_t>((i - 1) % 3)];
        const auto &twoAbove = rows[static_cast<std::size_t>((i + 1) % 3)];
        const int low = std::max(i - most, 0);
        const int high = std::min(i + most, m);
        if (low > 0)
            row[static_cast<std::size_t>(low) - 1] = tooMany;
        int least = tooMany;
        for (int j = low; j <= high; ++j) {
            const auto at = static_cast<std::size_t>(j);
            int edits = above[at] + 1; // beyond the band of the row above stands tooMany
            if (j > 0) {
                const auto a = static_cast<std::size_t>(i - 1);
                edits = std::min({edits, row[at - 1] + 1, above[at - 1] + (typed[a] == word[at - 1] ? 0 : 1)});
                if (i > 1 && j > 1 && typed[a] == word[at - 2] && typed[a - 1] == word[at - 1])
                    edits = std::min(edits, twoAbove[at - 2] + 1);
            }
            row[at] = std::min(edits, tooMany);
            least = std::min(least, row[at]);
        }
        row[static_cast<std::size_t>(high) + 1] = tooMany;
        if (least == tooMany) // no row grows nearer than the one above it
            return {tooMany, tooMany};
    }
    const auto &last = rows[static_cast<std::size_t>(n % 3)];
    Edits edits{tooMany, tooMany};
    for (int j = std::max(n - most, 0); j <= std::min(n + most, m); ++j)
        edits.begun = std::min(edits.begun, last[static_cast<std::size_t>(j)]);
    if (m <= n + most)
        edits.whole = last[static_cast<std::size_t>(m)];
    return edits;
}

NameSearch::NameSearch(const Atlas &atlas)
{
    for (const Structure &s : atlas.structures()) {
        const std::size_t structure = m_structures.size();
        m_structures.push_back(s.id);
        // The layer under a region is found by the region's name too, but after it.
        const double later = s.kind == Kind::SuperficialFascia ? 0.2 : 0;
        add(structure, s.names.english, later);
        for (const std::string &synonym : s.names.synonyms)
            add(structure, synonym, later + 0.02);
        add(structure, s.names.latin, later + 0.04);
        for (const auto &[language, plain] : s.names.plain)
            add(structure, plain, later + (language == "en" ? 0.06 : 0.08));
    }
}

void NameSearch::Vocabulary::add(const std::string &text, std::size_t name)
{
    const auto [it, fresh] = index.emplace(text, words.size());
    if (fresh) {
        words.push_back({text, {}});
        letters.push_back(lettersOf(text));
    }
    words[it->second].names.push_back(name);
}

template <class F> void NameSearch::Vocabulary::forEachNear(const std::string &typed, F use) const
{
    const int most = errorsAllowed(typed.size());
    const std::uint64_t wanted = lettersOf(typed);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::uint64_t lacking = wanted & ~letters[i]; // each letter that the word lacks takes an edit
        if (lacking != 0 && (most == 0 || std::popcount(lacking) > most))
            continue;
        const double cost = costOf(typed, words[i].text, most);
        if (cost != tooFar)
            for (const std::size_t name : words[i].names)
                use(name, cost);
    }
}

void NameSearch::add(std::size_t structure, const std::string &text, double rank)
{
    const auto words = wordsOf(foldedName(text));
    if (words.empty())
        return;
    const std::size_t name = m_names.size();
    std::string joined;
    std::set<std::string> different;
    for (const std::string &word : words) {
        if (different.insert(word).second)
            m_words.add(word, name);
        joined += word;
    }
    if (joined.size() <= longestWord)
        m_joined.add(joined, name);
    m_names.push_back({structure, text, different.size(), rank});
}

std::vector<NameHit> NameSearch::find(std::string_view typed, std::size_t most) const
{
    const auto words = wordsOf(foldedName(typed));
    if (words.empty() || most == 0)
        return {};
    std::vector<double> costs(m_names.size(), 0);
    std::vector<double> best(m_names.size());
    std::string joined;
    const std::set<std::string> different(words.begin(), words.end());
    for (const std::string &word : different) {
        std::fill(best.begin(), best.end(), tooFar);
        m_words.forEachNear(word, [&](std::size_t name, double cost) { best[name] = std::min(best[name], cost); });
        for (std::size_t name = 0; name < costs.size(); ++name)
            costs[name] += best[name];
    }
    for (std::size_t name = 0; name < costs.size(); ++name)
        if (m_names[name].words > different.size())
            costs[name] += restCost * static_cast<double>(m_names[name].words - different.size());
    for (const std::string &word : words)
        joined += word;
    if (joined.size() <= longestWord)
        m_joined.forEachNear(
            joined, [&](std::size_t name, double cost) { costs[name] = std::min(costs[name], cost + joinedCost); });

    std::vector<std::size_t> nearest(m_structures.size(), m_names.size()); // of each structure, its best name
    for (std::size_t name = 0; name < m_names.size(); ++name) {
        costs[name] += m_names[name].rank;
        std::size_t &current = nearest[m_names[name].structure];
        if (costs[name] < tooFar && (current == m_names.size() || costs[name] < costs[current]))
            current = name;
    }
    std::vector<NameHit> hits;
    for (std::size_t structure = 0; structure < nearest.size(); ++structure)
        if (const std::size_t name = nearest[structure]; name != m_names.size())
            hits.push_back({m_structures[structure], m_names[name].text, costs[name]});
    const auto nearer = [](const NameHit &a, const NameHit &b) {
        return std::tuple(a.cost, a.structure.value.size(), a.structure)
            < std::tuple(b.cost, b.structure.value.size(), b.structure);
    };
    const auto end = hits.begin() + static_cast<std::ptrdiff_t>(std::min(most, hits.size()));
    std::partial_sort(hits.begin(), end, hits.end(), nearer);
    hits.erase(end, hits.end());
    return hits;
}

} // namespace raphe
