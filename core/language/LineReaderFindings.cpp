// Clauses that name a structure.
#include "core/language/LineReader.h"

#include <algorithm>

namespace raphe::language {

void LineReader::readNames(const Clause &clause, Stretch at)
{
    m_last = {};
    m_last.names = clause.names;
    if (isAgainstHeading(clause, at))
        return;
    if (clause.sides.size() > 1)
        return readOnSides(clause, at);
    std::optional<SideSaid> side;
    if (!clause.sides.empty())
        side = SideSaid{clause.sides.front().side, stretchOf(clause.sides.front())};
    else if (m_headSide)
        side = SideSaid{*m_headSide, {}};
    readFinding(clause.names, side, clause.marks, at);
}

void LineReader::readParts(const std::vector<Mark> &names, const std::vector<SidePart> &parts, Stretch at)
{
    const auto first = static_cast<std::ptrdiff_t>(m_out.chips.size());
    bool isOpen = false;
    for (const SidePart &part : parts) {
        readFinding(names, SideSaid{part.side.side, stretchOf(part.side)}, part.marks, at);
        isOpen = isOpen || m_last.isPending;
    }
    m_last.isOfSeveralSides = parts.size() > 1;
    if (!isOpen)
        return;
    const auto isFinding = [](const LineChip &chip) { return std::holds_alternative<Finding>(chip.is); };
    m_out.chips.erase(std::remove_if(m_out.chips.begin() + first, m_out.chips.end(), isFinding), m_out.chips.end());
    m_current.clear();
    m_last.findings.clear();
    m_last.isPending = true;
}

void LineReader::readFinding(
    const std::vector<Mark> &names, const std::optional<SideSaid> &side, const std::vector<Mark> &marks, Stretch at)
{
    Issues issues(m_line);
    Said said = saidBy(marks, side.has_value(), areJoints(names), m_words, issues);
    said.what.refersTo = targetsOf(said, m_words, issues);
    if (said.isSame)
        takeSame(said, names, at, issues);
    std::vector<Finding> findings;
    for (const Mark &name : names)
        addFindings(name, side, said, findings, issues);
    if (!said.saysAnything() && !issues.any())
        askWhat(at, issues);
    checkSense(said, at, issues);
    m_last.findings.clear();
    m_last.isPending = issues.any();
    m_last.side = side;
    add(issues, at);
    if (issues.any())
        return;
    for (Finding &finding : findings) {
        m_last.findings.push_back(m_out.chips.size());
        m_current.push_back(m_out.chips.size());
        m_out.chips.push_back({at.begin, at.end, std::move(finding)});
    }
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

void LineReader::takeSame(Said &said, const std::vector<Mark> &names, Stretch at, Issues &issues) const
{
    if (m_before.empty()) {
        issues.fault(AskAbout::Structure, LineFault::NothingBefore, at);
        return;
    }
    const auto found = [&](std::size_t chip) {
        Finding finding = std::get<Finding>(m_out.chips[chip].is);
        finding.place = {};
        return finding;
    };
    Finding like = found(m_before.front());
    // Of two unlike ones neither is 'the same', and what refers to one side may not refer to the other's.
    const bool areAlike = std::all_of(m_before.begin(), m_before.end(), [&](std::size_t chip) { return found(chip) == like; });
    // What one structure has another need not have: joint play, an end feel, an end.
    const StructureId &before = std::get<Finding>(m_out.chips[m_before.front()].is).place.structure;
    const bool isOfOther = std::any_of(names.begin(), names.end(), [&](const Mark &name) {
        return name.structures.empty() || m_words.atlas().structures()[name.structures.front()].id != before;
    });
    const bool isOfItsOwn = like.spot || like.at || like.play || like.endFeel;
    if (!areAlike || !like.refersTo.empty() || (isOfOther && isOfItsOwn)) {
        issues.ask(AskAbout::Amount, Doubt::SayAnew, at);
        return;
    }
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
        question.choices.push_back({typed + " " + m_words.firstPhrase(word), {}});
}

} // namespace raphe::language
