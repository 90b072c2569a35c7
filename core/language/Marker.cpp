#include "core/language/Marker.h"

#include "core/language/GradeMarks.h"
#include "core/language/LineMarker.h"

#include <algorithm>

namespace raphe::language {

using Kind = LineWords::Kind;
using Meaning = LineWords::Meaning;

const Meaning *meaningOf(const std::optional<PhraseFound> &phrase, Kind kind)
{
    if (!phrase)
        return nullptr;
    const auto found =
        std::find_if(phrase->meanings->begin(), phrase->meanings->end(), [&](const Meaning &m) { return m.kind == kind; });
    return found == phrase->meanings->end() ? nullptr : &*found;
}

LineMarker::LineMarker(std::string_view line, const LineWords &words)
    : m_line(line), m_words(words), m_tokens(tokensOf(line)), m_reader(m_tokens, words)
{
}

std::vector<Mark> LineMarker::run()
{
    while (m_at < m_tokens.size())
        step();
    return std::move(m_marks);
}

void LineMarker::step()
{
    switch (m_tokens[m_at].kind) {
    case TokenKind::Comma: return addBreak(MarkKind::Break);
    case TokenKind::Colon:
        if (isColonWithin())
            ++m_at;
        else
            addBreak(MarkKind::Colon);
        return;
    case TokenKind::Plus:
        if (!addGradeAfterPluses())
            addBare(MarkKind::Pluses, static_cast<double>(m_tokens[m_at].text.size()), m_at + 1);
        return;
    case TokenKind::Dash:
    case TokenKind::Number: return addNumber();
    case TokenKind::Slash: ++m_at; return;
    case TokenKind::Word:
        if (isFullStop(m_at))
            addBreak(MarkKind::Break);
        else if (!addLetterAndNumber())
            addPhraseOrName();
    }
}

bool LineMarker::isFullStop(std::size_t token) const
{
    constexpr std::size_t shortest = 4; // letters of a word that is hardly cut short; our choice
    const bool isLast = token + 1 == m_tokens.size();
    const bool isStop =
        token > 0 && m_tokens[token].text == "." && m_tokens[token].glued && (isLast || !m_tokens[token + 1].glued);
    if (!isStop)
        return false;
    const Token &before = m_tokens[token - 1];
    const bool isWhole = before.kind == TokenKind::Number || before.text.size() >= shortest;
    const bool isInName = !m_marks.empty() && m_marks.back().kind == MarkKind::Name && m_marks.back().end == before.end;
    return isWhole && !isInName;
}

bool LineMarker::isColonWithin() const
{
    if (m_marks.empty())
        return false;
    const bool isBehindSide =
        m_marks.back().kind == MarkKind::Side && m_marks.size() > 1 && m_marks[m_marks.size() - 2].kind != MarkKind::Break;
    return isBehindSide || m_marks.back().kind == MarkKind::Move;
}

Mark &LineMarker::add(MarkKind kind, std::size_t end)
{
    Mark mark;
    mark.kind = kind;
    mark.begin = m_tokens[m_at].begin;
    mark.end = m_tokens[end - 1].end;
    m_marks.push_back(std::move(mark));
    m_at = end;
    return m_marks.back();
}

void LineMarker::addBreak(MarkKind kind)
{
    const bool isOfStructure = kind == MarkKind::Colon && m_hasName;
    const bool isNewLine = m_line[m_tokens[m_at].begin] == '\n' || m_line[m_tokens[m_at].begin] == '\r';
    add(kind, m_at + 1).text = isNewLine ? "\n" : "";
    m_before = isOfStructure ? m_lineStructure : Before::Nothing;
    m_hasName = false;
    m_inMeasure = false;
}

void LineMarker::addBare(MarkKind kind, double number, std::size_t end)
{
    add(kind, end).number = number;
    m_before = Before::Grade;
}

void LineMarker::addNumber()
{
    if (m_at + 1 < m_tokens.size() && m_tokens[m_at + 1].kind == TokenKind::Word && m_tokens[m_at + 1].glued)
        if (const auto name = m_reader.nameAt(m_at); name && name->how == NameHow::Whole) // '5th rib'
            return addName(*name);
    if (m_inMeasure && addDoubtfulMinus())
        return;
    const auto found = numberAt(m_tokens, m_at);
    if (!found) {
        ++m_at; // a dash between words
        return;
    }
    // A number run together with a word that is no unit and no side is no grade.
    const bool isOfWord = found->end < m_tokens.size() && m_tokens[found->end].kind == TokenKind::Word
        && m_tokens[found->end].glued && !m_reader.phraseAt(found->end);
    if (isOfWord) {
        add(MarkKind::Unknown, found->end + 1);
        return;
    }
    Mark &mark = add(MarkKind::Number, found->end);
    mark.bindsLeft = m_inMeasure; // the movement before it has it, not the next
    mark.number = found->value;
    mark.upTo = found->upTo;
    m_before = Before::Grade;
}

bool LineMarker::addDoubtfulMinus()
{
    const bool isDash = m_tokens[m_at].kind == TokenKind::Dash && m_at + 1 < m_tokens.size();
    if (!isDash || m_tokens[m_at + 1].kind != TokenKind::Number)
        return false;
    const bool isGluedToWord = m_tokens[m_at].glued && m_at > 0 && m_tokens[m_at - 1].kind == TokenKind::Word;
    if (m_tokens[m_at + 1].glued && !isGluedToWord)
        return false;
    add(MarkKind::Open, m_at + 2);
    return true;
}

bool LineMarker::addGradeAfterPluses()
{
    if (m_at + 1 >= m_tokens.size())
        return false;
    const Meaning *word = meaningOf(m_reader.phraseAt(m_at + 1), Kind::Word);
    const auto quality = word ? qualityOf(static_cast<LineWord>(word->index)) : std::nullopt;
    if (!quality)
        return false;
    const Token pluses = m_tokens[m_at];
    Mark &mark = add(MarkKind::Grade, m_reader.phraseAt(m_at + 1)->end);
    mark.grade = {*quality, static_cast<double>(pluses.text.size()), {}, pluses.begin, pluses.end};
    m_before = Before::Grade;
    return true;
}

bool LineMarker::addLetterAndNumber()
{
    if (m_at + 1 >= m_tokens.size() || m_tokens[m_at + 1].kind != TokenKind::Number || !m_tokens[m_at + 1].glued)
        return false;
    if (m_inMeasure && addSide(m_at + 1))
        return true;
    const auto level = levelAt(m_tokens, m_at, m_words);
    const auto name = m_reader.nameAt(m_at);
    const bool isLongName =
        name && name->how == NameHow::Whole && name->end > m_at + std::max<std::size_t>(level ? level->tokens : 2, 2);
    if (isLongName)
        return false;
    if (addLetterGrade(level))
        return true;
    if (!level)
        return false;
    if (level->structures.empty()) {
        add(MarkKind::NoLevel, m_at + level->tokens);
        return true;
    }
    addName({m_at + level->tokens, NameHow::Whole, level->structures, level->structures.size() == 1, 0});
    return true;
}

bool LineMarker::addLetterGrade(const std::optional<Level> &level)
{
    const auto &letters = m_words.list().gradeLetters;
    const auto letter = std::find_if(
        letters.begin(), letters.end(), [&](const WordList::GradeLetter &l) { return l.letter == m_tokens[m_at].text; });
    const auto number = letter == letters.end() ? std::nullopt : numberAt(m_tokens, m_at + 1);
    if (!number)
        return false;
    const auto *meanings = m_words.meanings(letter->grades.front());
    const auto quality = meanings ? qualityOf(static_cast<LineWord>(meanings->front().index)) : std::nullopt;
    const bool isSure = letter->afterStructure && quality;
    if (isSure) {
        const double most = std::max(number->value, number->upTo.value_or(0));
        const bool couldBeGrade = most <= highestOf(*quality);
        if (m_before == Before::Nothing || (!couldBeGrade && level))
            return false;
        if (m_before == Before::Structure) {
            Mark &mark = add(MarkKind::Grade, number->end);
            mark.grade = {*quality, number->value, number->upTo, mark.begin, mark.end};
            mark.bindsLeft = true;
            m_before = Before::Grade;
            return true;
        }
        if (number->upTo) // after something of the spine a pair is a segment
            return false;
    }
    Mark &mark = add(MarkKind::LetterGrade, number->end);
    mark.text = letter->letter;
    mark.number = number->value;
    mark.bindsLeft = true;
    m_before = Before::Grade;
    return true;
}

std::vector<Mark> marksOf(std::string_view line, const LineWords &words)
{
    return LineMarker(line, words).run();
}

} // namespace raphe::language
