// Clauses that speak of what was named before.
#include "core/language/Levels.h"
#include "core/language/LineReader.h"

#include <algorithm>

namespace raphe::language {

void LineReader::readContinued(const Clause &clause, Stretch at)
{
    const bool hasSpot = std::any_of(clause.marks.begin(), clause.marks.end(),
        [](const Mark &m) { return m.kind == MarkKind::Spot || m.kind == MarkKind::At; });
    if (m_last.movement && m_last.names.empty())
        return continueMovement(clause, at);
    if (m_last.names.empty())
        return readOrphan(clause, at);
    const bool isOpen =
        m_last.isPending && std::any_of(m_last.names.begin(), m_last.names.end(), [](const Mark &name) { return !name.isSure; });
    if (isOpen)
        return; // what the name means is asked already
    Clause whole = clause;
    whole.names = m_last.names;
    whole.of = Clause::Of::Names;
    whole.firstSaid = 0;
    if (!clause.sides.empty())
        return readOnSides(whole, at);
    if (m_last.isOfSeveralSides) {
        Issues issues(m_line);
        issues.ask(AskAbout::Side, Doubt::SayAnew, at);
        return add(issues, at);
    }
    const bool isFirst = m_last.findings.empty() && !m_last.isPending; // right behind a heading
    if (hasSpot || isFirst) {
        const auto names = m_last.names;
        auto side = m_last.side ? m_last.side : m_last.headSide;
        if (!side && m_headSide)
            side = SideSaid{*m_headSide, {}};
        return readFinding(names, side, clause.marks, at);
    }
    if (!m_last.isPending)
        addToLast(clause, at);
}

void LineReader::readOnSides(const Clause &whole, Stretch at)
{
    if (isAgainstHeading(whole, at))
        return;
    const auto parts = sideParts(whole);
    if (parts.empty()) {
        Issues issues(m_line);
        issues.fault(AskAbout::Side, LineFault::BothSides, spanOf(stretchOf(whole.sides.front()), stretchOf(whole.sides.back())));
        add(issues, at);
        m_last.isPending = true;
        return;
    }
    const auto names = whole.names;
    m_last.isOfSeveralSides = false;
    if (parts.size() == 1)
        return readFinding(names, SideSaid{whole.sides.front().side, stretchOf(whole.sides.front())}, whole.marks, at);
    readParts(names, parts, at);
}

void LineReader::addToLast(const Clause &clause, Stretch at)
{
    Issues issues(m_line);
    Said said = saidBy(clause.marks, true, areJoints(m_last.names), m_words, issues);
    said.what.refersTo = targetsOf(said, m_words, issues);
    if (said.isSame) // as itself?
        issues.ask(AskAbout::Amount, Doubt::SayAnew, at);
    std::vector<Finding> merged;
    for (const std::size_t chip : m_last.findings) {
        Finding finding = std::get<Finding>(m_out.chips[chip].is);
        if (!addTo(finding, said.what)) {
            issues.fault(AskAbout::Amount, LineFault::GradeTwice, at);
            break;
        }
        Said both = said;
        both.what = finding;
        checkSense(both, at, issues);
        merged.push_back(std::move(finding));
    }
    add(issues, at);
    if (issues.any())
        return;
    m_current = m_last.findings;
    for (std::size_t i = 0; i < merged.size(); ++i) {
        LineChip &chip = m_out.chips[m_last.findings[i]];
        chip.end = std::max(chip.end, at.end);
        chip.is = std::move(merged[i]);
    }
}

void LineReader::continueMovement(Clause clause, Stretch at)
{
    const bool hasNumber =
        std::any_of(clause.marks.begin(), clause.marks.end(), [](const Mark &m) { return m.kind == MarkKind::Number; });
    if (!hasNumber)
        return readOrphan(clause, at);
    clause.of = Clause::Of::Movement;
    clause.movement = m_last.movement;
    readMovement(clause, at);
}

void LineReader::readOrphan(const Clause &clause, Stretch at)
{
    Issues issues(m_line);
    for (std::size_t i = 0; i + 1 < clause.marks.size(); ++i)
        if (clause.marks[i].couldBeLevel && clause.marks[i + 1].kind == MarkKind::Number)
            askLevel(clause.marks[i], clause.marks[i + 1], issues);
    if (!issues.any())
        issues.fault(AskAbout::Structure, LineFault::NothingBefore, at);
    add(issues, at);
    m_last = {};
    m_last.isPending = true;
}

void LineReader::askLevel(const Mark &side, const Mark &number, Issues &issues) const
{
    const Stretch at = spanOf(stretchOf(side), stretchOf(number));
    const std::string letter = issues.textOf(stretchOf(side));
    const std::string digits = issues.textOf(stretchOf(number));
    LineQuestion &question = issues.ask(AskAbout::Structure, Doubt::LevelOrSide, at);
    const auto tokens = tokensOf(letter + digits);
    if (const auto level = levelAt(tokens, 0, m_words))
        for (const std::size_t structure : level->structures)
            question.choices.push_back(
                {m_words.names().sureName(m_words.atlas(), structure), m_words.atlas().structures()[structure].id});
    if (!number.upTo)
        question.choices.push_back({phraseOf(side.side, m_words) + " " + digits, {}});
}

} // namespace raphe::language
