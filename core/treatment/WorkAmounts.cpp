#include "core/treatment/WorkAmounts.h"

#include <algorithm>
#include <charconv>

namespace raphe {

namespace {

using language::Token;
using language::TokenKind;
using Tokens = std::vector<Token>;

constexpr double secondsInMinute = 60;
constexpr double beyondAll = 1e9;

bool isKind(const Tokens &tokens, std::size_t at, TokenKind kind)
{
    return at < tokens.size() && tokens[at].kind == kind;
}

bool isGlued(const Tokens &tokens, std::size_t at, TokenKind kind)
{
    return isKind(tokens, at, kind) && tokens[at].glued;
}

bool isUnit(const Tokens &tokens, std::size_t at, const std::vector<std::string> &says)
{
    return isKind(tokens, at, TokenKind::Word) && std::find(says.begin(), says.end(), tokens[at].text) != says.end();
}

// Not a sign, such as a bracket.
bool isLetters(const Token &token)
{
    const char c = token.text.front();
    return token.kind == TokenKind::Word && ((c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80U);
}

// A letter directly before or behind makes it part of a name: 'l5', the 's' of 'l5 s1'.
bool startsNumber(const Tokens &tokens, std::size_t at)
{
    return isKind(tokens, at, TokenKind::Number) && !(at > 0 && tokens[at].glued && isLetters(tokens[at - 1]));
}

bool endsUnit(const Tokens &tokens, std::size_t at)
{
    return !isGlued(tokens, at + 1, TokenKind::Number);
}

// '60-90', '1/2', '10:30 min', '.5': only the end of a number or of a range, which is taken whole.
void takeWhole(const Tokens &tokens, WorkAmount &into)
{
    const std::size_t at = into.begin;
    if (at == 0)
        return;
    const Token &before = tokens[at - 1];
    const bool isBetween = before.kind == TokenKind::Dash || before.kind == TokenKind::Slash
        || (before.kind == TokenKind::Colon && tokens[at].glued);
    if (isBetween && at > 1 && tokens[at - 2].kind == TokenKind::Number)
        into.begin = at - 2;
    else if (before.kind == TokenKind::Word && before.text == "." && tokens[at].glued)
        into.begin = at - 1;
    into.isOne = into.isOne && into.begin == at;
}

double valueOf(const Token &token)
{
    double value = beyondAll; // stays when there are more digits than a number can have
    std::from_chars(token.text.data(), token.text.data() + token.text.size(), value);
    return std::min(value, beyondAll);
}

bool isWhole(const Token &token)
{
    return token.text.find('.') == std::string::npos;
}

bool isClock(const Tokens &tokens, std::size_t at)
{
    return isGlued(tokens, at + 1, TokenKind::Colon) && isGlued(tokens, at + 2, TokenKind::Number);
}

WorkAmount clockAt(const Tokens &tokens, std::size_t at, const WordList::Work &words)
{
    const Token &seconds = tokens[at + 2];
    WorkAmount out{at, at + 3, valueOf(tokens[at]) * secondsInMinute + valueOf(seconds), true};
    out.isOne = isWhole(tokens[at]) && isWhole(seconds) && seconds.text.size() == 2 && valueOf(seconds) < secondsInMinute;
    while (isClock(tokens, out.end - 1)) {
        out.end += 2;
        out.isOne = false;
    }
    if (isUnit(tokens, out.end, words.minutes) && endsUnit(tokens, out.end))
        ++out.end;
    return out;
}

// '2 min 30 s', '2min30'.
void takeSeconds(const Tokens &tokens, WorkAmount &into, const WordList::Work &words)
{
    const std::size_t at = into.end;
    if (!isKind(tokens, at, TokenKind::Number) || valueOf(tokens[at]) >= secondsInMinute || !isWhole(tokens[at]))
        return;
    const bool isNamed = isUnit(tokens, at + 1, words.seconds) && endsUnit(tokens, at + 1);
    if (!isNamed && !(tokens[at].glued && tokens[at].text.size() == 2))
        return;
    into.value += valueOf(tokens[at]);
    into.end = at + (isNamed ? 2 : 1);
}

} // namespace

std::optional<WorkAmount> durationAt(const Tokens &tokens, std::size_t at, bool isAfterAt, const WordList::Work &words)
{
    if (!startsNumber(tokens, at))
        return {};
    WorkAmount out{at, at + 2, valueOf(tokens[at]), true};
    if (isClock(tokens, at)) {
        if (isAfterAt)
            return {};
        out = clockAt(tokens, at, words);
    } else if (isUnit(tokens, at + 1, words.minutes)) {
        out.value *= secondsInMinute;
        if (isWhole(tokens[at]))
            takeSeconds(tokens, out, words);
        if (out.end == at + 2 && !endsUnit(tokens, at + 1))
            return {};
    } else if (!isUnit(tokens, at + 1, words.seconds) || !endsUnit(tokens, at + 1)) {
        return {};
    }
    takeWhole(tokens, out);
    return out;
}

std::optional<WorkAmount> suctionAt(const Tokens &tokens, std::size_t at, const WordList::Work &words)
{
    if (!startsNumber(tokens, at) || !isUnit(tokens, at + 1, words.kilopascals))
        return {};
    WorkAmount out{at, at + 2, valueOf(tokens[at]), true};
    takeWhole(tokens, out);
    return out;
}

} // namespace raphe
