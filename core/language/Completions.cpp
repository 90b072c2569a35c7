#include "core/language/Lexer.h"
#include "core/language/LineReading.h"

#include <algorithm>
#include <set>

namespace raphe {

using namespace language;

namespace {

constexpr std::size_t mostTypedWords = 5; // of a name that is being typed; our choice
constexpr std::size_t roomForPhrases = 3; // among the names; our choice

bool isWordLike(const Token &token)
{
    return token.kind == TokenKind::Word || token.kind == TokenKind::Number;
}

class Completer {
public:
    Completer(std::string_view line, std::size_t cursor, const LineWords &words, std::size_t most)
        : m_words(words), m_most(most), m_cursor(std::min(cursor, line.size()))
    {
        for (Token &token : tokensOf(line.substr(0, m_cursor)))
            m_tokens.push_back(std::move(token));
    }

    // The longest stretch of words before the cursor that begins a name comes first.
    std::vector<LineCompletion> run()
    {
        if (m_tokens.empty() || m_tokens.back().end != m_cursor)
            return {};
        std::size_t from = m_tokens.size();
        while (from > 0 && isWordLike(m_tokens[from - 1]) && m_tokens.size() - from < mostTypedWords)
            --from;
        for (; from < m_tokens.size(); ++from) {
            const std::string typed = textFrom(from);
            if (typed.size() < 2)
                continue;
            const auto phrases = phrasesBeginning(typed);
            addNames(typed, m_tokens[from].begin, std::min(phrases.size(), roomForPhrases));
            for (const std::string &phrase : phrases)
                add(phrase, m_tokens[from].begin, {});
        }
        return std::move(m_out);
    }

private:
    std::string textFrom(std::size_t from) const
    {
        std::string typed;
        for (std::size_t i = from; i < m_tokens.size(); ++i)
            if (!m_words.names().isJoiner(m_tokens[i].text))
                typed.append(typed.empty() ? "" : " ").append(m_tokens[i].text);
        return typed;
    }

    void add(std::string insert, std::size_t begin, std::optional<StructureId> structure)
    {
        if (m_out.size() < m_most && m_seen.insert(insert).second)
            m_out.push_back({std::move(insert), begin, m_cursor, std::move(structure)});
    }

    void addNames(const std::string &typed, std::size_t begin, std::size_t room)
    {
        const auto &structures = m_words.atlas().structures();
        const std::size_t left = m_most - std::min(m_most, m_out.size() + room);
        for (const NameIndex::Begun &begun : m_words.names().beginning(typed, left))
            add(begun.name, begin, structures[begun.structure].id);
    }

    std::vector<std::string> phrasesBeginning(const std::string &typed) const
    {
        std::vector<std::string> found;
        for (const LineMovement &movement : m_words.list().movements)
            for (const std::string &says : movement.alone)
                if (says.starts_with(typed) && says != typed)
                    found.push_back(says);
        for (const auto &[word, says] : m_words.list().words)
            if (word != LineWord::Filler && std::find(says.begin(), says.end(), typed) == says.end()) // else it is said already
                for (const std::string &phrase : says)
                    if (phrase.starts_with(typed))
                        found.push_back(phrase);
        for (const std::string &texture : m_words.list().textures)
            if (texture.starts_with(typed) && texture != typed)
                found.push_back(texture);
        std::sort(found.begin(), found.end(),
            [](const std::string &a, const std::string &b) { return std::pair(a.size(), a) < std::pair(b.size(), b); });
        return found;
    }

    const LineWords &m_words;
    std::size_t m_most;
    std::size_t m_cursor;
    std::vector<Token> m_tokens;
    std::vector<LineCompletion> m_out;
    std::set<std::string> m_seen;
};

} // namespace

std::vector<LineCompletion> completions(std::string_view line, std::size_t cursor, const LineWords &words, std::size_t most)
{
    return Completer(line, cursor, words, most).run();
}

} // namespace raphe
