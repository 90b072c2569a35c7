#include "core/language/LineReader.h"

#include "core/language/Marker.h"
#include "core/language/Moves.h"

#include <algorithm>
#include <utility>

namespace raphe::language {

LineReading LineReader::run()
{
    std::vector<Mark> part;
    for (Mark &mark : marksOf(m_line, m_words)) {
        if (mark.kind == MarkKind::Break) {
            readPart(part);
            part.clear();
            if (!mark.text.empty()) { // a new line begins anew
                m_headSide.reset();
                m_last = {};
                m_current.clear();
            }
        } else if (mark.kind == MarkKind::Colon) {
            if (!takeHeading(part))
                readPart(part);
            part.clear();
        } else {
            part.push_back(std::move(mark));
        }
    }
    readPart(part);
    std::stable_sort(
        m_out.chips.begin(), m_out.chips.end(), [](const LineChip &a, const LineChip &b) { return a.begin < b.begin; });
    return std::move(m_out);
}

bool LineReader::takeHeading(const std::vector<Mark> &part)
{
    const bool isHeading = !part.empty() && std::all_of(part.begin(), part.end(), [](const Mark &m) {
        return m.kind == MarkKind::Side || m.kind == MarkKind::Name || m.kind == MarkKind::Region || m.kind == MarkKind::And;
    });
    const auto countOf = [&](auto is) { return std::count_if(part.begin(), part.end(), is); };
    const bool isOfSeveral = countOf([](const Mark &m) { return m.kind == MarkKind::Side; }) > 1
        || countOf([](const Mark &m) { return m.region.has_value(); }) > 1;
    if (!isHeading || isOfSeveral) // whose side, or which joint, would what follows be of?
        return false;
    const bool hasName = std::any_of(part.begin(), part.end(), [](const Mark &m) { return m.kind == MarkKind::Name; });
    const bool hasRegion = std::any_of(part.begin(), part.end(), [](const Mark &m) { return m.kind == MarkKind::Region; });
    std::optional<SideSaid> head;
    for (const Mark &mark : part)
        if (mark.kind == MarkKind::Side)
            head = SideSaid{mark.side, stretchOf(mark)};
    if (!hasName && !hasRegion) { // what was named before is spoken of again, on this side
        m_headSide = head->side;
        m_last.side.reset();
        m_last.headSide.reset();
        m_last.findings.clear();
        m_last.isPending = false;
        return true;
    }
    m_headSide.reset();
    m_last = {};
    for (const Mark &mark : part) {
        if (mark.kind == MarkKind::Name)
            m_last.names.push_back(mark);
        if (mark.region)
            m_last.headRegion = mark.region;
    }
    m_last.headSide = head;
    return true;
}

void LineReader::readPart(const std::vector<Mark> &part)
{
    std::vector<Mark> marks;
    for (std::size_t i = 0; i < part.size(); ++i) {
        const bool isAnd = part[i].kind == MarkKind::And;
        const bool isList = isAnd && i > 0 && i + 1 < part.size() && isPlace(part[i - 1]) && isPlace(part[i + 1]);
        const bool isEnd = isAnd && !isList && i + 1 < part.size()
            && (isPlace(part[i + 1]) || part[i + 1].kind == MarkKind::Side || part[i + 1].kind == MarkKind::Move
                || part[i + 1].kind == MarkKind::Spot);
        if (isEnd) {
            readMarks(marks);
            marks.clear();
        } else if (!isAnd || isList) {
            marks.push_back(part[i]);
        }
    }
    readMarks(marks);
}

bool LineReader::isPlace(const Mark &mark)
{
    return mark.kind == MarkKind::Name || mark.kind == MarkKind::Region || mark.kind == MarkKind::NoLevel;
}

void LineReader::readMarks(const std::vector<Mark> &marks)
{
    if (marks.empty())
        return;
    for (Clause &clause : clausesOf(marks, m_words, m_headSide ? HeadSide::Yes : HeadSide::No))
        readClause(clause);
}

Stretch LineReader::stretchOfClause(const Clause &clause)
{
    std::optional<Stretch> all;
    const auto take = [&](const Mark &mark) { all = all ? spanOf(*all, stretchOf(mark)) : stretchOf(mark); };
    for (const Mark &mark : clause.names)
        take(mark);
    for (const Mark &mark : clause.marks)
        take(mark);
    if (clause.movement)
        take(*clause.movement);
    return all.value_or(Stretch{});
}

void LineReader::readClause(Clause &clause)
{
    const Stretch at = stretchOfClause(clause);
    m_before = std::exchange(m_current, {});
    if (clause.contested || clause.isBeside) {
        if (clause.contested)
            askContested(*clause.contested, at);
        else
            askBeside(clause.names.front(), at);
        m_last = {};
        m_last.names = clause.names;
        m_last.isPending = true;
        return;
    }
    switch (clause.of) {
    case Clause::Of::Movement: return readMovement(clause, at);
    case Clause::Of::Names: return readNames(clause, at);
    case Clause::Of::Nothing: return readContinued(clause, at);
    }
}

void LineReader::askContested(const Mark &side, Stretch at)
{
    for (const LineChip &chip : m_out.chips)
        if (const auto *question = std::get_if<LineQuestion>(&chip.is); question && question->begin == side.begin)
            return;
    Issues issues(m_line);
    LineQuestion &question = issues.ask(AskAbout::Side, Doubt::SideOfEither, stretchOf(side));
    const std::string typed = issues.textOf(stretchOf(side));
    question.choices = {{typed + ",", {}}, {", " + typed, {}}};
    add(issues, at);
}

// What follows may be said of both, or the two may be one name.
void LineReader::askBeside(const Mark &name, Stretch at)
{
    Issues issues(m_line);
    LineQuestion &question = issues.ask(AskAbout::Structure, Doubt::NamesSideBySide, stretchOf(name));
    question.choices = {{"and " + issues.textOf(stretchOf(name)), {}}};
    add(issues, at);
}

bool LineReader::isAgainstHeading(const Clause &clause, Stretch at)
{
    const auto other = std::find_if(
        clause.sides.begin(), clause.sides.end(), [&](const Mark &side) { return m_headSide && side.side != *m_headSide; });
    if (other == clause.sides.end())
        return false;
    Issues issues(m_line);
    issues.fault(AskAbout::Side, LineFault::BothSides, stretchOf(*other));
    add(issues, at);
    m_last.isPending = true;
    return true;
}

void LineReader::add(const Issues &issues, Stretch at)
{
    for (const LineMistake &mistake : issues.mistakes())
        m_out.chips.push_back({at.begin, at.end, mistake});
    if (issues.mistakes().empty() && !issues.questions().empty())
        m_out.chips.push_back({at.begin, at.end, issues.questions().front()});
}

void LineReader::readMovement(const Clause &clause, Stretch at)
{
    if (isAgainstHeading(clause, at))
        return;
    Issues issues(m_line);
    std::optional<SideSaid> head;
    if (m_headSide)
        head = SideSaid{*m_headSide, {}};
    // 'right hip: ir 30' is the right hip's, but 'right knee: flexion 120, hip ir 30' leaves the hip's side open.
    const auto &moves = clause.movement->movements;
    const bool isOfHeading = m_last.headRegion && std::all_of(moves.begin(), moves.end(), [&](std::size_t m) {
        return m_words.list().movements[m].isOf(m_words.list().regions[*m_last.headRegion].id);
    });
    if (!head && isOfHeading)
        head = m_last.headSide;
    const auto measures = measuresOf(clause, head, m_words, issues);
    for (const Measure &measure : measures)
        for (const LineChip &chip : m_out.chips)
            if (const auto *before = std::get_if<Measure>(&chip.is); before && before->movement == measure.movement
                && before->side == measure.side && before->mode == measure.mode && before->value && measure.value)
                issues.fault(AskAbout::Side, LineFault::SideTwice, at);
    add(issues, at);
    if (!issues.any())
        for (const Measure &measure : measures)
            m_out.chips.push_back({at.begin, at.end, measure});
    m_last.movement = clause.movement;
    m_last.names.clear();
    m_last.findings.clear();
    m_last.isPending = issues.any();
}

} // namespace raphe::language
