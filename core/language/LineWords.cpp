#include "core/language/LineWords.h"

#include "core/anatomy/NameSearch.h"
#include "core/language/Lexer.h"

#include <algorithm>

namespace raphe {

using namespace language;

LineWords::LineWords(const Atlas &atlas, WordList list) : m_atlas(atlas), m_list(std::move(list)), m_names(atlas, m_list)
{
    for (const auto &[word, says] : m_list.words)
        add(says, {Kind::Word, static_cast<std::size_t>(word)});
    for (std::size_t i = 0; i < m_list.textures.size(); ++i)
        add({m_list.textures[i]}, {Kind::Texture, i});
    for (std::size_t i = 0; i < m_list.devices.size(); ++i)
        add(m_list.devices[i].says, {Kind::Device, i});
    for (std::size_t i = 0; i < m_list.shared.size(); ++i)
        add(m_list.shared[i].says, {Kind::Shared, i});
    for (std::size_t i = 0; i < m_list.regions.size(); ++i)
        add(m_list.regions[i].says, {Kind::Region, i});
    for (std::size_t i = 0; i < m_list.movements.size(); ++i) {
        add(m_list.movements[i].alone, {Kind::Movement, i});
        add(m_list.movements[i].says, {Kind::Move, i});
        add(m_list.movements[i].unclear, {Kind::UnclearMove, i});
    }
    for (const auto &[key, meanings] : m_phrases)
        if (key.size() > 3 && key.find(' ') == std::string::npos)
            m_single.push_back(key);
    std::sort(m_single.begin(), m_single.end());
}

namespace {

constexpr std::size_t longestShort = 5; // letters of a phrase that must keep its letters

bool keepsItsLetters(std::string_view typed, std::string_view phrase)
{
    std::string a(typed);
    std::string b(phrase);
    if (a.size() == b.size()) {
        std::sort(a.begin(), a.end());
        std::sort(b.begin(), b.end());
        return a == b;
    }
    const std::string &longer = a.size() > b.size() ? a : b;
    const std::string &shorter = a.size() > b.size() ? b : a;
    const auto differ =
        static_cast<std::size_t>(std::mismatch(shorter.begin(), shorter.end(), longer.begin()).first - shorter.begin());
    const bool isOneMore = longer.size() == shorter.size() + 1 && longer.substr(differ + 1) == shorter.substr(differ);
    return isOneMore && (b.size() > a.size() || (differ > 0 && longer[differ] == longer[differ - 1]));
}

} // namespace

void LineWords::add(const std::vector<std::string> &says, Meaning meaning)
{
    for (const std::string &phrase : says) {
        std::string key;
        std::size_t count = 0;
        for (const Token &token : tokensOf(phrase)) {
            if (token.kind == TokenKind::Dash)
                continue;
            key.append(key.empty() ? "" : " ").append(token.text);
            ++count;
        }
        m_phrases[key].push_back(meaning);
        m_longest = std::max(m_longest, count);
    }
}

const std::string &LineWords::firstPhrase(LineWord word) const
{
    static const std::string none;
    const auto found =
        std::find_if(m_list.words.begin(), m_list.words.end(), [&](const auto &entry) { return entry.first == word; });
    return found == m_list.words.end() || found->second.empty() ? none : found->second.front();
}

const std::vector<LineWords::Meaning> *LineWords::meanings(const std::string &key) const
{
    const auto found = m_phrases.find(key);
    return found == m_phrases.end() ? nullptr : &found->second;
}

std::vector<LineWords::NearPhrase> LineWords::nearest(std::string_view word) const
{
    std::vector<NearPhrase> out;
    if (word.size() < 4)
        return out;
    int most = word.size() <= 6 ? 1 : 2;
    for (const std::string &phrase : m_single) {
        const Edits edits = editsBetween(word, phrase, most);
        if (edits.whole > most || (phrase.size() <= longestShort && !keepsItsLetters(word, phrase)))
            continue;
        if (edits.whole < most)
            out.clear();
        most = edits.whole;
        out.push_back({phrase, edits.whole});
    }
    return out;
}

} // namespace raphe
