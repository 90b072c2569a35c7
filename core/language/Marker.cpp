#include "core/language/Marker.h"

#include "core/language/GradeMarks.h"
#include "core/language/Levels.h"
#include "core/language/NameReader.h"

#include <algorithm>

namespace raphe::language {

namespace {

using Kind = LineWords::Kind;
using Meaning = LineWords::Meaning;

const Meaning *meaningOf(const std::optional<PhraseFound> &phrase, Kind kind)
{
    if (!phrase)
        return nullptr;
    const auto found
        = std::find_if(phrase->meanings->begin(), phrase->meanings->end(), [&](const Meaning &m) { return m.kind == kind; });
    return found == phrase->meanings->end() ? nullptr : &*found;
}

class Marker {
public:
    Marker(std::string_view line, const LineWords &words)
        : m_line(line), m_words(words), m_tokens(tokensOf(line)), m_reader(m_tokens, words)
    {
    }

    std::vector<Mark> run()
    {
        while (m_at < m_tokens.size())
            step();
        return std::move(m_marks);
    }

private:
    // What stands before a 't3' decides what it may be.
    enum class Before { Nothing, Structure, Spine, Grade };

    void step()
    {
        switch (m_tokens[m_at].kind) {
        case TokenKind::Comma: return addBreak(MarkKind::Break);
        case TokenKind::Colon: return addBreak(MarkKind::Colon);
        case TokenKind::Plus:
            if (!addGradeAfterPluses())
                addBare(MarkKind::Pluses, static_cast<double>(m_tokens[m_at].text.size()), m_at + 1);
            return;
        case TokenKind::Dash:
        case TokenKind::Number: return addNumber();
        case TokenKind::Slash: ++m_at; return;
        case TokenKind::Word:
            if (!addLetterAndNumber())
                addPhraseOrName();
        }
    }

    Mark &add(MarkKind kind, std::size_t end)
    {
        Mark mark;
        mark.kind = kind;
        mark.begin = m_tokens[m_at].begin;
        mark.end = m_tokens[end - 1].end;
        m_marks.push_back(std::move(mark));
        m_at = end;
        return m_marks.back();
    }

    void addBreak(MarkKind kind)
    {
        const bool isOfStructure = kind == MarkKind::Colon && m_hasName;
        add(kind, m_at + 1);
        m_before = isOfStructure ? m_lineStructure : Before::Nothing;
        m_hasName = false;
        m_inMeasure = false;
    }

    void addBare(MarkKind kind, double number, std::size_t end)
    {
        add(kind, end).number = number;
        m_before = Before::Grade;
    }

    void addNumber()
    {
        if (m_at + 1 < m_tokens.size() && m_tokens[m_at + 1].kind == TokenKind::Word && m_tokens[m_at + 1].glued)
            if (const auto name = m_reader.nameAt(m_at); name && name->how == NameHow::Whole) // '5th rib'
                return addName(*name);
        const auto found = numberAt(m_tokens, m_at);
        if (!found) {
            ++m_at; // a dash between words
            return;
        }
        Mark &mark = add(MarkKind::Number, found->end);
        mark.number = found->value;
        mark.upTo = found->upTo;
        m_before = Before::Grade;
    }

    bool addGradeAfterPluses()
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

    // 't3', 'l4/5', 'r2', and in a row of measured values 'r40'.
    bool addLetterAndNumber()
    {
        if (m_at + 1 >= m_tokens.size() || m_tokens[m_at + 1].kind != TokenKind::Number || !m_tokens[m_at + 1].glued)
            return false;
        if (m_inMeasure && addSide(m_at + 1))
            return true;
        const auto level = levelAt(m_tokens, m_at, m_words);
        const auto name = m_reader.nameAt(m_at);
        const bool isLongName
            = name && name->how == NameHow::Whole && name->end > m_at + std::max<std::size_t>(level ? level->tokens : 2, 2);
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

    bool addLetterGrade(const std::optional<Level> &level)
    {
        const auto &letters = m_words.list().gradeLetters;
        const auto letter = std::find_if(letters.begin(), letters.end(),
            [&](const WordList::GradeLetter &l) { return l.letter == m_tokens[m_at].text; });
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

    void addPhraseOrName()
    {
        const std::size_t token = m_at;
        const auto &phrase = m_reader.phraseAt(token);
        const auto name = m_reader.nameAt(token);
        const std::size_t phraseEnd = phrase ? phrase->end : token;
        const std::size_t nameEnd = name ? name->end : token;
        const bool isFirmName = name && (name->how == NameHow::Whole || name->how == NameHow::Short);
        if (const Meaning *word = meaningOf(phrase, Kind::Word); word && phraseEnd >= nameEnd)
            return addWord(static_cast<LineWord>(word->index), phraseEnd);
        if (phraseEnd >= nameEnd || !isFirmName) {
            if (const Meaning *movement = meaningOf(phrase, Kind::Movement))
                return addMove({movement->index}, phraseEnd);
            if (addMoveOf(phrase))
                return;
            if (const Meaning *texture = meaningOf(phrase, Kind::Texture)) {
                add(MarkKind::Texture, phraseEnd).text = m_words.list().textures[texture->index];
                return;
            }
            if (const Meaning *device = meaningOf(phrase, Kind::Device); device && m_inMeasure) {
                add(MarkKind::Device, phraseEnd).text = m_words.list().devices[device->index].device;
                return;
            }
        }
        if (const Meaning *shared = meaningOf(phrase, Kind::Shared); shared && phraseEnd >= nameEnd)
            return addShared(*shared, phraseEnd);
        const bool isMove = meaningOf(phrase, Kind::Move) || meaningOf(phrase, Kind::UnclearMove);
        if (isMove && !isFirmName)
            return addMove({}, phraseEnd);
        if (name && (isFirmName || !misspeltPhrase(token, name->how == NameHow::Misspelt ? name->edits : 99)))
            return addName(*name);
        if (const Meaning *region = meaningOf(phrase, Kind::Region)) {
            m_region = region->index;
            add(MarkKind::Region, phraseEnd).region = region->index;
            return;
        }
        if (const auto near = misspeltPhrase(token, 99))
            return addMisspelt(*near);
        add(MarkKind::Unknown, token + 1);
    }

    // The one meaning that a misspelt word is nearest to, if it is nearer than `edits`. Words that say nothing are no reading:
    // they would make an unknown word vanish.
    std::optional<Meaning> misspeltPhrase(std::size_t token, int edits) const
    {
        if (m_reader.phraseAt(token))
            return {};
        std::optional<Meaning> found;
        for (const LineWords::NearPhrase &near : m_words.nearest(m_tokens[token].text)) {
            if (near.edits > edits)
                return {};
            const Meaning meaning = m_words.meanings(near.key)->front();
            if (found && (found->kind != meaning.kind || found->index != meaning.index))
                return {};
            found = meaning;
        }
        if (found && found->kind == Kind::Word && static_cast<LineWord>(found->index) == LineWord::Filler)
            return {};
        return found;
    }

    void addMisspelt(const Meaning &meaning)
    {
        const std::size_t end = m_at + 1;
        switch (meaning.kind) {
        case Kind::Word: return addWord(static_cast<LineWord>(meaning.index), end);
        case Kind::Texture: add(MarkKind::Texture, end).text = m_words.list().textures[meaning.index]; return;
        case Kind::Device: add(MarkKind::Device, end).text = m_words.list().devices[meaning.index].device; return;
        case Kind::Shared: return addShared(meaning, end);
        case Kind::Region:
            m_region = meaning.index;
            add(MarkKind::Region, end).region = meaning.index;
            return;
        case Kind::Movement: return addMove({meaning.index}, end);
        case Kind::Move:
        case Kind::UnclearMove: {
            const auto near = m_words.nearest(m_tokens[m_at].text);
            const PhraseFound phrase{end, m_words.meanings(near.front().key), near.front().key};
            if (!addMoveOf(phrase))
                addMove({}, end);
            return;
        }
        }
    }

    // Movements of the joint that was named before in the line.
    bool addMoveOf(const std::optional<PhraseFound> &phrase)
    {
        if (!phrase || !m_region)
            return false;
        const std::string &region = m_words.list().regions[*m_region].id;
        std::vector<std::size_t> movements;
        for (const Meaning &meaning : *phrase->meanings) {
            if (meaning.kind != Kind::Move && meaning.kind != Kind::UnclearMove)
                continue;
            const LineMovement &movement = m_words.list().movements[meaning.index];
            if (movement.region == region
                || std::find(movement.also.begin(), movement.also.end(), region) != movement.also.end())
                movements.push_back(meaning.index);
        }
        if (movements.empty())
            return false;
        addMove(std::move(movements), phrase->end);
        return true;
    }

    void addMove(std::vector<std::size_t> movements, std::size_t end)
    {
        add(MarkKind::Move, end).movements = std::move(movements);
        m_inMeasure = true;
        m_before = Before::Grade;
    }

    void addShared(const Meaning &shared, std::size_t end)
    {
        NameFound name{end, NameHow::Begun, {}, false, 0};
        for (const StructureId &id : m_words.list().shared[shared.index].structures)
            name.structures.push_back(
                static_cast<std::size_t>(m_words.atlas().find(id) - m_words.atlas().structures().data()));
        addName(name);
    }

    void addName(const NameFound &name)
    {
        const std::size_t token = m_at;
        Mark &mark = add(MarkKind::Name, name.end);
        mark.structures = name.structures;
        mark.isSure = name.isSure;
        mark.isShort = name.how == NameHow::Short;
        mark.region = regionOf(token, name);
        if (mark.region)
            m_region = mark.region;
        const auto &atlas = m_words.atlas();
        const bool isOfSpineHere = std::any_of(name.structures.begin(), name.structures.end(),
            [&](std::size_t s) { return isOfSpine(atlas.structures()[s], atlas); });
        m_lineStructure = isOfSpineHere ? Before::Spine : Before::Structure;
        m_before = m_lineStructure;
        m_inMeasure = false;
        m_hasName = true;
    }

    // The joint that movements after this name belong to.
    std::optional<std::size_t> regionOf(std::size_t token, const NameFound &name) const
    {
        const auto &regions = m_words.list().regions;
        if (const Meaning *region = meaningOf(m_reader.phraseAt(token), Kind::Region); region && name.end == token + 1)
            return region->index;
        if (name.isSure)
            for (std::size_t i = 0; i < regions.size(); ++i)
                if (std::find(regions[i].joints.begin(), regions[i].joints.end(),
                        m_words.atlas().structures()[name.structures.front()].id)
                    != regions[i].joints.end())
                    return i;
        if (name.end != token + 1 || m_tokens[token].text.size() < 3 || m_reader.phraseAt(token))
            return {};
        if (const auto near = misspeltPhrase(token, 1); near && near->kind == Kind::Region)
            return near->index;
        for (std::size_t i = 0; i < regions.size(); ++i)
            for (const std::string &says : regions[i].says)
                if (says.starts_with(m_tokens[token].text))
                    return i;
        return {};
    }

    bool addSide(std::size_t end)
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

    static std::optional<SideWord> sideOf(LineWord word)
    {
        switch (word) {
        case LineWord::Left: return SideWord::Left;
        case LineWord::Right: return SideWord::Right;
        case LineWord::Both: return SideWord::Both;
        case LineWord::Midline: return SideWord::Midline;
        default: return {};
        }
    }

    void addWord(LineWord word, std::size_t end)
    {
        if (const auto quality = qualityOf(word)) {
            const std::size_t begin = m_at;
            const GradeFound grade = gradeAfter(m_tokens, end, *quality, m_words);
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
        case LineWord::And:
            add(MarkKind::And, end);
            m_before = m_before == Before::Grade ? m_before : Before::Nothing;
            return;
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
        case LineWord::Retest: add(MarkKind::Retest, end); return;
        case LineWord::Degrees:
        case LineWord::Millimetres:
        case LineWord::Centimetres: add(MarkKind::Unit, end).word = word; return;
        case LineWord::SuperficialFasciaOf: return addSuperficialFascia(end);
        default: add(MarkKind::Unknown, end); return;
        }
    }

    void addClear(LineWord word, std::size_t end)
    {
        add(MarkKind::Clear, end).word = word;
        m_before = Before::Grade;
    }

    void addSideWord(LineWord word, std::size_t end)
    {
        const std::string typed = m_tokens[m_at].text;
        Mark &mark = add(MarkKind::Side, end);
        mark.side = *sideOf(word);
        if (!m_inMeasure && end < m_tokens.size() && m_tokens[end].kind == TokenKind::Number)
            if (const auto number = numberAt(m_tokens, end))
                mark.couldBeLevel = vertebra(typed, static_cast<int>(number->value), m_words).has_value();
        m_before = m_lineStructure; // what follows is of the structure before, on this side
    }

    void addUnable(std::size_t end)
    {
        std::size_t from = end;
        while (from < m_tokens.size() && (m_tokens[from].kind == TokenKind::Colon || m_tokens[from].kind == TokenKind::Dash))
            ++from;
        std::size_t to = from;
        while (to < m_tokens.size() && m_tokens[to].kind != TokenKind::Comma)
            ++to;
        Mark &mark = add(MarkKind::Unable, to);
        if (from < to)
            mark.text = std::string(m_line.substr(m_tokens[from].begin, m_tokens[to - 1].end - m_tokens[from].begin));
    }

    bool isFiller(std::size_t token) const
    {
        const Meaning *word = meaningOf(m_reader.phraseAt(token), Kind::Word);
        return m_words.names().isJoiner(m_tokens[token].text)
            || (word && static_cast<LineWord>(word->index) == LineWord::Filler);
    }

    std::optional<SideWord> sideAt(std::size_t token) const
    {
        const bool isLevel = token + 1 < m_tokens.size() && m_tokens[token + 1].kind == TokenKind::Number && m_tokens[token + 1].glued;
        const bool couldBe = token < m_tokens.size() && !isLevel;
        const Meaning *word = couldBe ? meaningOf(m_reader.phraseAt(token), Kind::Word) : nullptr;
        return word ? sideOf(static_cast<LineWord>(word->index)) : std::nullopt;
    }

    // The side of the comparison is no side of a finding.
    void addAfterComparing(std::size_t end)
    {
        while (end < m_tokens.size() && isFiller(end))
            end = m_reader.phraseAt(end) ? m_reader.phraseAt(end)->end : end + 1;
        if (sideAt(end))
            end = m_reader.phraseAt(end)->end;
        add(MarkKind::AfterComparing, end);
    }

    // Parts are marked by going on as usual and taking the marks back.
    void addRefersTo(std::size_t end)
    {
        const std::size_t first = m_marks.size();
        const Before before = m_before;
        const Before structure = m_lineStructure;
        const bool hasName = m_hasName;
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
    }

    bool isAnd(std::size_t token) const
    {
        const Meaning *word = meaningOf(m_reader.phraseAt(token), Kind::Word);
        return word && static_cast<LineWord>(word->index) == LineWord::And;
    }

    void takeTarget(std::size_t into)
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

    void addAt(std::size_t end)
    {
        while (end < m_tokens.size() && isFiller(end) && !m_reader.nameAt(end))
            ++end;
        const Before before = m_before;
        const Before structure = m_lineStructure;
        const bool hasName = m_hasName;
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
    }

    void addPainFrom(std::size_t end)
    {
        const auto number = end < m_tokens.size() ? numberAt(m_tokens, end) : std::nullopt;
        Mark &mark = add(number ? MarkKind::PainFrom : MarkKind::Unknown, number ? number->end : end);
        if (number)
            mark.number = number->value;
    }

    void addSuperficialFascia(std::size_t end)
    {
        const std::size_t begin = m_tokens[m_at].begin;
        while (end < m_tokens.size() && m_words.names().isJoiner(m_tokens[end].text))
            ++end;
        const auto name = end < m_tokens.size() ? m_reader.nameAt(end) : std::nullopt;
        if (!name) {
            add(MarkKind::Unknown, end);
            return;
        }
        NameFound under{name->end, name->how, {}, name->isSure, 0};
        for (const std::size_t s : name->structures)
            if (const Structure *layer = m_words.atlas().find({"sf-" + m_words.atlas().structures()[s].id.value}))
                under.structures.push_back(static_cast<std::size_t>(layer - m_words.atlas().structures().data()));
        if (under.structures.empty()) {
            add(MarkKind::Unknown, name->end);
            return;
        }
        under.isSure = under.structures.size() == 1;
        m_at = end;
        addName(under);
        m_marks.back().begin = begin;
    }

    std::string_view m_line;
    const LineWords &m_words;
    std::vector<Token> m_tokens;
    NameReader m_reader;
    std::vector<Mark> m_marks;
    std::size_t m_at = 0;
    Before m_before = Before::Nothing;
    Before m_lineStructure = Before::Nothing;
    std::optional<std::size_t> m_region; // the joint that was named last
    bool m_hasName = false; // since the last break
    bool m_inMeasure = false; // a movement was named since the last break or name
};

} // namespace

std::vector<Mark> marksOf(std::string_view line, const LineWords &words)
{
    return Marker(line, words).run();
}

} // namespace raphe::language
