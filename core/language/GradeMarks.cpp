#include "core/language/GradeMarks.h"

#include "core/record/Visit.h"

#include <algorithm>
#include <charconv>

namespace raphe::language {

namespace {

constexpr double beyondAnyScale = 1e6;

double valueOf(const std::string &digits)
{
    double value = beyondAnyScale; // stays when there are more digits than a number can have
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return std::min(value, beyondAnyScale);
}

bool isKind(const std::vector<Token> &tokens, std::size_t at, TokenKind kind, bool glued)
{
    return at < tokens.size() && tokens[at].kind == kind && tokens[at].glued == glued;
}

bool meansNormal(const std::string &text, const LineWords &words)
{
    if (const auto *meanings = words.meanings(text))
        for (const LineWords::Meaning &meaning : *meanings)
            if (meaning.kind == LineWords::Kind::Word && static_cast<LineWord>(meaning.index) == LineWord::Normal)
                return true;
    return false;
}

} // namespace

std::optional<NumberFound> numberAt(const std::vector<Token> &tokens, std::size_t at)
{
    const bool isNegative = at + 1 < tokens.size() && tokens[at].kind == TokenKind::Dash
        && (!tokens[at].glued || at == 0 || tokens[at - 1].kind != TokenKind::Number)
        && isKind(tokens, at + 1, TokenKind::Number, true);
    const std::size_t digits = isNegative ? at + 1 : at;
    if (digits >= tokens.size() || tokens[digits].kind != TokenKind::Number)
        return {};
    NumberFound out{digits + 1, valueOf(tokens[digits].text) * (isNegative ? -1 : 1), {}};
    const bool isRange = (isKind(tokens, digits + 1, TokenKind::Dash, true) || isKind(tokens, digits + 1, TokenKind::Slash, true))
        && isKind(tokens, digits + 2, TokenKind::Number, true);
    if (isRange && !isNegative) {
        out.upTo = valueOf(tokens[digits + 2].text);
        out.end = digits + 3;
    }
    return out;
}

std::optional<Quality> qualityOf(LineWord word)
{
    switch (word) {
    case LineWord::Tender: return Quality::Tender;
    case LineWord::Stiff: return Quality::Stiff;
    case LineWord::Play: return Quality::Play;
    default: return {};
    }
}

int highestOf(Quality quality)
{
    switch (quality) {
    case Quality::Tender: return Tenderness::highest;
    case Quality::Stiff: return Restriction::highest;
    case Quality::Play: break;
    }
    return JointPlay::highest;
}

GradeFound gradeAfter(const std::vector<Token> &tokens, std::size_t at, Quality quality, const LineWords &words)
{
    GradeFound out{{quality, {}, {}, 0, 0}, at};
    if (at >= tokens.size())
        return out;
    if (quality == Quality::Play && tokens[at].kind == TokenKind::Word && meansNormal(tokens[at].text, words)) {
        out.said.value = JointPlay::normal;
        out.end = at + 1;
    } else if (tokens[at].kind == TokenKind::Plus) {
        out.said.value = static_cast<double>(tokens[at].text.size());
        out.end = at + 1;
    } else if (const auto number = numberAt(tokens, at)) {
        // The number of a name ('tender rib 5', '5th rib') is no grade.
        if (isKind(tokens, number->end, TokenKind::Word, true) && !number->upTo
            && words.names().choose(tokens[number->end].text, Freedom::Exact).hasExact && tokens[number->end].text.size() == 2)
            return out;
        out.said.value = number->value;
        out.said.upTo = number->upTo;
        out.end = number->end;
    }
    if (out.said.value) {
        out.said.numberBegin = tokens[at].begin;
        out.said.numberEnd = tokens[out.end - 1].end;
    }
    return out;
}

} // namespace raphe::language
