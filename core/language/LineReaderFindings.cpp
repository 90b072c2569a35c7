// Clauses that name a structure.
#include "core/language/LineReader.h"

#include <algorithm>

namespace raphe::language {

void LineReader::readNames(const Clause &clause, Stretch at)
{
    m_last = {};
    m_last.names = clause.names;
    if (clause.sides.size() > 1) {
        const auto parts = sideParts(clause);
        if (parts.empty()) {
            Issues issues(m_line);
            issues.fault(
                AskAbout::Side, LineFault::BothSides, spanOf(stretchOf(clause.sides.front()), stretchOf(clause.sides.back())));
            add(issues, at);
            m_last.isPending = true;
            return;
        }
        for (const SidePart &part : parts)
            readFinding(clause.names, SideSaid{part.side.side, stretchOf(part.side)}, part.marks, at);
        return;
    }
    std::optional<SideSaid> side;
    if (!clause.sides.empty())
        side = SideSaid{clause.sides.front().side, stretchOf(clause.sides.front())};
    if (side && m_headSide && side->side != *m_headSide) {
        Issues issues(m_line);
        issues.fault(AskAbout::Side, LineFault::BothSides, *side->at);
        add(issues, at);
        m_last.isPending = true;
        return;
    }
    if (!side && m_headSide)
        side = SideSaid{*m_headSide, {}};
    readFinding(clause.names, side, clause.marks, at);
}

void LineReader::readFinding(
    const std::vector<Mark> &names, const std::optional<SideSaid> &side, const std::vector<Mark> &marks, Stretch at)
{
    Issues issues(m_line);
    Said said = saidBy(marks, side.has_value(), areJoints(names), m_words, issues);
    if (said.isSame)
        takeSame(said, at, issues);
    said.what.refersTo = targetsOf(said, m_words, issues);
    std::vector<Finding> findings;
    for (const Mark &name : names)
        addFindings(name, side, said, findings, issues);
    if (!said.saysAnything() && !issues.any())
        askWhat(at, issues);
    checkSense(said, at, issues);
    m_last.findings.clear();
    m_last.isPending = issues.any();
    m_last.side = side;
    m_before.clear();
    add(issues, at);
    if (issues.any())
        return;
    for (Finding &finding : findings) {
        m_last.findings.push_back(m_out.chips.size());
        m_out.chips.push_back({at.begin, at.end, std::move(finding)});
    }
    m_before = m_last.findings;
}

bool LineReader::areJoints(const std::vector<Mark> &names) const
{
    return std::all_of(names.begin(), names.end(), [&](const Mark &name) {
        return name.isSure && m_words.atlas().structures()[name.structures.front()].kind == Kind::Joint;
    });
}

void LineReader::addFindings(
    const Mark &name, const std::optional<SideSaid> &side, const Said &said, std::vector<Finding> &findings, Issues &issues) const
{
    const auto structure = structureOf(name, side, said, m_words, issues);
    if (!structure)
        return;
    Finding finding = said.what;
    checkJoint(*structure, name, said, m_words, issues);
    placeSpot(*structure, said, finding, m_words, issues);
    finding.place.structure = m_words.atlas().structures()[*structure].id;
    for (const Side s : sidesOf(*structure, name, side, m_words, issues)) {
        finding.place.side = s;
        findings.push_back(finding);
    }
}

void LineReader::takeSame(Said &said, Stretch at, Issues &issues) const
{
    if (m_before.empty()) {
        issues.fault(AskAbout::Structure, LineFault::NothingBefore, at);
        return;
    }
    Finding like = std::get<Finding>(m_out.chips[m_before.front()].is);
    like.place = {};
    if (!addTo(like, said.what))
        issues.fault(AskAbout::Amount, LineFault::GradeTwice, at);
    const auto spot = said.what.spot;
    said.what = like;
    if (spot)
        said.what.spot = spot;
}

void LineReader::askWhat(Stretch at, Issues &issues) const
{
    const std::string typed = issues.textOf(at);
    LineQuestion &question = issues.ask(AskAbout::Amount, Doubt::NothingSaid, at);
    for (const LineWord word : {LineWord::Tender, LineWord::Stiff, LineWord::Clear})
        for (const auto &[w, says] : m_words.list().words)
            if (w == word)
                question.choices.push_back({typed + " " + says.front(), {}});
}

} // namespace raphe::language
