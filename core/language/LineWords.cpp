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
        if (edits.whole > most)
            continue;
        if (edits.whole < most)
            out.clear();
        most = edits.whole;
        out.push_back({phrase, edits.whole});
    }
    return out;
}

} // namespace raphe
