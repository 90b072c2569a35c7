// What the single words of the trade mark, with what belongs to them.
#include "core/language/GradeMarks.h"
#include "core/language/LineMarker.h"

#include <algorithm>

namespace raphe::language {

using Kind = LineWords::Kind;
using Meaning = LineWords::Meaning;

bool LineMarker::addSide(std::size_t end)
{
    const auto *meanings = m_words.meanings(m_tokens[m_at].text);
    if (!meanings)
        return false;
    for (const Meaning &meaning : *meanings)
        if (meaning.kind == Kind::Word)
            if (const auto side = sideOf(static_cast<LineWord>(meaning.index))) {
                add(MarkKind::Side, end).side = *side;
                return true;
            }
    return false;
}

std::optional<SideWord> LineMarker::sideOf(LineWord word)
{
    switch (word) {
    case LineWord::Left: return SideWord::Left;
    case LineWord::Right: return SideWord::Right;
    case LineWord::Both: return SideWord::Both;
    case LineWord::Midline: return SideWord::Midline;
    default: return {};
    }
}

void LineMarker::addWord(LineWord word, std::size_t end)
{
    if (const auto quality = qualityOf(word)) {
        const std::size_t begin = m_at;
        const GradeFound grade = gradeAfter(m_tokens, end, *quality, m_words);
        if (!grade.said.value && isNegatedToo()) {
            add(MarkKind::Open, end);
            return;
        }
        add(MarkKind::Grade, grade.end).grade = grade.said;
        m_marks.back().begin = m_tokens[begin].begin;
        m_before = Before::Grade;
        return;
    }
    switch (word) {
    case LineWord::Filler: m_at = end; return;
    case LineWord::Left:
    case LineWord::Right:
    case LineWord::Both:
    case LineWord::Midline: return addSideWord(word, end);
    case LineWord::Belly:
    case LineWord::Origin:
    case LineWord::Insertion:
    case LineWord::Border:
    case LineWord::Junction:
        add(MarkKind::Spot, end).word = word;
        m_before = m_before == Before::Nothing ? m_lineStructure : m_before;
        return;
    case LineWord::Normal:
    case LineWord::Clear: return addClear(LineWord::Clear, end);
    case LineWord::ClearOfTenderness:
    case LineWord::ClearOfMotion: return addClear(word, end);
    case LineWord::Unable: return addUnable(end);
    case LineWord::Familiar:
    case LineWord::NotFamiliar: add(MarkKind::Familiar, end).word = word; return;
    case LineWord::Certain:
    case LineWord::NotCertain: add(MarkKind::Certain, end).word = word; return;
    case LineWord::AfterComparing: return addAfterComparing(end);
    case LineWord::RefersTo: return addRefersTo(end);
    case LineWord::At: return addAt(end);
    case LineWord::And: add(MarkKind::And, end); return;
    case LineWord::Same: add(MarkKind::Same, end); return;
    case LineWord::EndFeelSoft:
    case LineWord::EndFeelFirm:
    case LineWord::EndFeelHard:
    case LineWord::EndFeelSpringy:
    case LineWord::EndFeelEmpty:
    case LineWord::EndFeelSpasm: add(MarkKind::EndFeel, end).word = word; return;
    case LineWord::Active:
    case LineWord::Passive: add(MarkKind::Mode, end).word = word; return;
    case LineWord::PainFrom: return addPainFrom(end);
    case LineWord::Open: add(MarkKind::Open, end); return;
    case LineWord::Degrees:
    case LineWord::Millimetres:
    case LineWord::Centimetres: add(MarkKind::Unit, end).word = word; return;
    case LineWord::SuperficialFasciaOf: return addSuperficialFascia(end);
    default: add(MarkKind::Unknown, end); return;
    }
}

void LineMarker::addClear(LineWord word, std::size_t end)
{
    add(MarkKind::Clear, end).word = word;
    m_before = Before::Grade;
}

void LineMarker::addSideWord(LineWord word, std::size_t end)
{
    const std::string typed = m_tokens[m_at].text;
    Mark &mark = add(MarkKind::Side, end);
    mark.side = *sideOf(word);
    if (!m_inMeasure && end < m_tokens.size() && m_tokens[end].kind == TokenKind::Number)
        if (const auto number = numberAt(m_tokens, end))
            mark.couldBeLevel = vertebra(typed, static_cast<int>(number->value), m_words).has_value();
    m_before = m_lineStructure; // what follows is of the structure before, on this side
}

void LineMarker::addUnable(std::size_t end)
{
    std::size_t from = end;
    while (from < m_tokens.size() && (m_tokens[from].kind == TokenKind::Colon || m_tokens[from].kind == TokenKind::Dash))
        ++from;
    std::size_t to = from;
    while (to < m_tokens.size() && m_tokens[to].kind != TokenKind::Comma && !isFullStop(to))
        ++to;
    Mark &mark = add(MarkKind::Unable, to);
    if (from < to)
        mark.text = std::string(m_line.substr(m_tokens[from].begin, m_tokens[to - 1].end - m_tokens[from].begin));
}

bool LineMarker::isNegatedToo() const
{
    auto last = m_marks.rbegin();
    while (last != m_marks.rend() && last->kind == MarkKind::And)
        ++last;
    if (last == m_marks.rend() || last->kind != MarkKind::Clear
        || (m_tokens[m_at - 1].kind != TokenKind::Slash && !isAnd(m_at - 1)))
        return false;
    const auto first = std::find_if(m_tokens.begin(), m_tokens.end(), [&](const Token &t) { return t.begin == last->begin; });
    const auto *meanings = m_words.meanings(first->text);
    return meanings && std::any_of(meanings->begin(), meanings->end(), [](const Meaning &m) {
        return m.kind == Kind::Word && static_cast<LineWord>(m.index) == LineWord::Open;
    });
}

bool LineMarker::isFiller(std::size_t token) const
{
    const Meaning *word = meaningOf(m_reader.phraseAt(token), Kind::Word);
    return m_words.names().isJoiner(m_tokens[token].text) || (word && static_cast<LineWord>(word->index) == LineWord::Filler);
}

std::optional<SideWord> LineMarker::sideAt(std::size_t token) const
{
    const bool isLevel =
        token + 1 < m_tokens.size() && m_tokens[token + 1].kind == TokenKind::Number && m_tokens[token + 1].glued;
    const bool couldBe = token < m_tokens.size() && !isLevel;
    const Meaning *word = couldBe ? meaningOf(m_reader.phraseAt(token), Kind::Word) : nullptr;
    return word ? sideOf(static_cast<LineWord>(word->index)) : std::nullopt;
}

void LineMarker::addAfterComparing(std::size_t end)
{
    while (end < m_tokens.size() && isFiller(end))
        end = m_reader.phraseAt(end) ? m_reader.phraseAt(end)->end : end + 1;
    if (sideAt(end))
        end = m_reader.phraseAt(end)->end;
    add(MarkKind::AfterComparing, end);
}

void LineMarker::addRefersTo(std::size_t end)
{
    const std::size_t first = m_marks.size();
    const Before before = m_before;
    const Before structure = m_lineStructure;
    const bool hasName = m_hasName;
    const auto region = m_region;
    add(MarkKind::RefersTo, end);
    takeTarget(first);
    while (m_at < m_tokens.size() && isAnd(m_at) && sideAt(m_reader.phraseAt(m_at)->end)) {
        const std::size_t again = m_at;
        m_at = m_reader.phraseAt(m_at)->end;
        takeTarget(first);
        if (m_at < m_tokens.size() && m_tokens[m_at].kind != TokenKind::Comma && !isAnd(m_at)) {
            // More is said of it: it is a finding of its own.
            auto &parts = m_marks[first].parts;
            while (!parts.empty() && parts.back().begin >= m_tokens[again].begin)
                parts.pop_back();
            m_at = again;
            m_marks[first].end = m_tokens[again - 1].end;
            break;
        }
    }
    m_before = before == Before::Nothing ? structure : before;
    m_lineStructure = structure;
    m_hasName = hasName;
    m_region = region;
}

bool LineMarker::isSpot(std::size_t token) const
{
    const Meaning *word = token < m_tokens.size() ? meaningOf(m_reader.phraseAt(token), Kind::Word) : nullptr;
    const auto is = word ? static_cast<LineWord>(word->index) : LineWord::Filler;
    return is == LineWord::Belly || is == LineWord::Origin || is == LineWord::Insertion || is == LineWord::Border
        || is == LineWord::Junction;
}

bool LineMarker::isAnd(std::size_t token) const
{
    const Meaning *word = meaningOf(m_reader.phraseAt(token), Kind::Word);
    return word && static_cast<LineWord>(word->index) == LineWord::And;
}

void LineMarker::takeTarget(std::size_t into)
{
    const std::size_t first = m_marks.size();
    bool hasSide = false;
    bool hasName = false;
    while (m_at < m_tokens.size() && m_tokens[m_at].kind == TokenKind::Word) {
        if (isFiller(m_at) && !m_reader.nameAt(m_at)) {
            ++m_at;
            continue;
        }
        const bool isSide = sideAt(m_at).has_value();
        if ((isSide && hasSide) || (!isSide && hasName))
            break;
        if (!isSide && !hasName && !m_reader.nameAt(m_at) && m_reader.phraseAt(m_at)
            && !meaningOf(m_reader.phraseAt(m_at), Kind::Shared) && !meaningOf(m_reader.phraseAt(m_at), Kind::Region))
            break;
        hasSide = hasSide || isSide;
        hasName = hasName || !isSide;
        step();
    }
    Mark &mark = m_marks[into];
    mark.parts.insert(mark.parts.end(), m_marks.begin() + static_cast<std::ptrdiff_t>(first), m_marks.end());
    m_marks.erase(m_marks.begin() + static_cast<std::ptrdiff_t>(first), m_marks.end());
    m_marks[into].end = m_tokens[m_at - 1].end;
}

void LineMarker::addAt(std::size_t end)
{
    while (end < m_tokens.size() && isFiller(end) && !m_reader.nameAt(end))
        ++end;
    if (isSpot(end)) { // 'at the origin'
        m_at = end;
        return;
    }
    const Before before = m_before;
    const Before structure = m_lineStructure;
    const bool hasName = m_hasName;
    const auto region = m_region;
    if (sideAt(end) && end + 1 < m_tokens.size()) {
        m_at = end;
        step();
        end = m_at;
    }
    const std::size_t begin = m_at;
    const bool hasTarget = end < m_tokens.size() && m_reader.nameAt(end).has_value();
    add(MarkKind::At, std::max(end, begin + 1));
    const std::size_t into = m_marks.size() - 1;
    if (hasTarget) {
        m_at = end;
        step();
        m_marks[into].parts.push_back(m_marks.back());
        m_marks[into].end = m_marks.back().end;
        m_marks.pop_back();
    }
    m_before = before == Before::Nothing ? structure : before;
    m_lineStructure = structure;
    m_hasName = hasName;
    m_region = region;
}

void LineMarker::addPainFrom(std::size_t end)
{
    const auto number = end < m_tokens.size() ? numberAt(m_tokens, end) : std::nullopt;
    if (!number) {
        add(MarkKind::Unknown, end);
        return;
    }
    // 'from 60 to 120' is an arc, of which a measure has no room.
    const std::size_t next = number->end < m_tokens.size() && isFiller(number->end) ? number->end + 1 : number->end;
    const auto upTo = next < m_tokens.size() ? numberAt(m_tokens, next) : std::nullopt;
    if (number->upTo || (upTo && next > number->end)) {
        add(MarkKind::Open, upTo && next > number->end ? upTo->end : number->end);
        return;
    }
    add(MarkKind::PainFrom, number->end).number = number->value;
}

} // namespace raphe::language
