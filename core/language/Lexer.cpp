#include "core/language/Lexer.h"

#include "core/anatomy/NameSearch.h"

#include <algorithm>
#include <optional>

namespace raphe::language {

namespace {

// ASCII only, whatever the locale: all other bytes belong to letters of some script until folding says otherwise.
bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}
bool isLetter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '\'' || static_cast<unsigned char>(c) >= 0x80U;
}
bool isBlank(char c)
{
    return c == ' ' || c == '\t' || c == '\v' || c == '\f';
}

// The blank at which no line breaks.
bool isWideBlank(std::string_view rest)
{
    return rest.starts_with("\u00a0");
}

// Signs of more than one byte that people's keyboards put in the place of plainer ones.
struct Sign {
    std::string_view bytes;
    TokenKind kind;
    std::string_view text;
};
constexpr Sign signs[] = {{"\u2013", TokenKind::Dash, "-"}, {"\u2014", TokenKind::Dash, "-"}, {"\u2212", TokenKind::Dash, "-"},
    {"\u00b0", TokenKind::Word, "\u00b0"}, {"\u00ba", TokenKind::Word, "\u00ba"}, {"\u2044", TokenKind::Slash, "/"}};

const Sign *signAt(std::string_view rest)
{
    const auto *found =
        std::find_if(std::begin(signs), std::end(signs), [&](const Sign &sign) { return rest.starts_with(sign.bytes); });
    return found == std::end(signs) ? nullptr : found;
}

TokenKind kindOf(char c)
{
    switch (c) {
    case '+': return TokenKind::Plus;
    case '-': return TokenKind::Dash;
    case '/': return TokenKind::Slash;
    case ':': return TokenKind::Colon;
    case ',':
    case ';':
    case '\n':
    case '\r': return TokenKind::Comma;
    default: return TokenKind::Word; // a sign that only the list of words can make sense of
    }
}

class Lexer {
public:
    explicit Lexer(std::string_view line) : m_line(line) { }

    std::vector<Token> run()
    {
        while (m_at < m_line.size()) {
            if (isBlank(m_line[m_at]) || isWideBlank(m_line.substr(m_at))) {
                m_at += isBlank(m_line[m_at]) ? 1 : 2;
                m_glued = false;
            } else if (const Sign *sign = signAt(m_line.substr(m_at))) {
                add(sign->kind, m_at + sign->bytes.size(), std::string(sign->text));
            } else if (isDigit(m_line[m_at])) {
                addNumber();
            } else if (isLetter(m_line[m_at]) && m_line[m_at] != '\'') {
                addWord();
            } else {
                addSign();
            }
        }
        return std::move(m_tokens);
    }

private:
    void add(TokenKind kind, std::size_t end, std::string text)
    {
        m_tokens.push_back({kind, m_at, end, std::move(text), m_glued});
        m_at = end;
        m_glued = true;
    }

    std::size_t pastDigits(std::size_t at) const
    {
        while (at < m_line.size() && isDigit(m_line[at]))
            ++at;
        return at;
    }

    // '32,5' is one number where it can be nothing else: one digit follows, and it is no list ('t4,5', '2,3,4').
    bool isDecimalComma(std::size_t at) const
    {
        const bool isOfWord = m_glued && !m_tokens.empty() && m_tokens.back().kind == TokenKind::Word;
        if (isOfWord || at + 1 >= m_line.size() || m_line[at] != ',' || !isDigit(m_line[at + 1]))
            return false;
        return at + 2 == m_line.size() || isBlank(m_line[at + 2]);
    }

    void addNumber()
    {
        std::size_t end = pastDigits(m_at);
        if (end + 1 < m_line.size() && m_line[end] == '.' && isDigit(m_line[end + 1]))
            end = pastDigits(end + 1);
        else if (isDecimalComma(end))
            end += 2;
        std::string digits(m_line.substr(m_at, end - m_at));
        std::replace(digits.begin(), digits.end(), ',', '.');
        add(TokenKind::Number, end, std::move(digits));
    }

    void addWord()
    {
        std::size_t end = m_at;
        bool plain = true;
        while (end < m_line.size() && isLetter(m_line[end]) && !signAt(m_line.substr(end)) && !isWideBlank(m_line.substr(end))) {
            plain = plain && static_cast<unsigned char>(m_line[end]) < 0x80U;
            ++end;
        }
        add(TokenKind::Word, end, plain ? lowered(m_line.substr(m_at, end - m_at)) : foldedWord(m_line.substr(m_at, end - m_at)));
    }

    void addSign()
    {
        const TokenKind kind = kindOf(m_line[m_at]);
        std::size_t end = m_at + 1;
        while (kind == TokenKind::Plus && end < m_line.size() && m_line[end] == '+')
            ++end;
        add(kind, end, std::string(m_line.substr(m_at, end - m_at)));
    }

    static std::string lowered(std::string_view word)
    {
        std::string out;
        out.reserve(word.size());
        for (const char c : word)
            if (c != '\'')
                out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        return out;
    }

    // Bytes that are no letters in any script stay as they are: an unknown word, which is asked about.
    static std::string foldedWord(std::string_view word)
    {
        std::string folded = foldedName(word);
        std::erase(folded, ' ');
        return folded.empty() ? std::string(word) : folded;
    }

    std::string_view m_line;
    std::size_t m_at = 0;
    bool m_glued = false;
    std::vector<Token> m_tokens;
};

} // namespace

std::vector<Token> tokensOf(std::string_view line)
{
    return Lexer(line).run();
}

} // namespace raphe::language
