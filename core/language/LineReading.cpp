#include "core/language/LineReading.h"

#include "core/language/Clause.h"
#include "core/language/Issue.h"
#include "core/language/Levels.h"
#include "core/language/Marker.h"
#include "core/language/Moves.h"
#include "core/language/Places.h"
#include "core/language/Said.h"

#include <algorithm>

namespace raphe {

using namespace language;

namespace {

class Reader {
public:
    Reader(std::string_view line, const LineWords &words) : m_line(line), m_words(words) { }

    LineReading run()
    {
        std::vector<Mark> part;
        for (Mark &mark : marksOf(m_line, m_words)) {
            if (mark.kind == MarkKind::Break) {
                readPart(part);
                part.clear();
            } else if (mark.kind == MarkKind::Colon) {
                if (!takeHeading(part))
                    readPart(part);
                part.clear();
            } else {
                part.push_back(std::move(mark));
            }
        }
        readPart(part);
        std::stable_sort(m_out.chips.begin(), m_out.chips.end(),
            [](const LineChip &a, const LineChip &b) { return a.begin < b.begin; });
        return std::move(m_out);
    }

private:
    // 'right:' gives the side to every clause of the line, 'si:' the structure.
    bool takeHeading(const std::vector<Mark> &part)
    {
        const bool isHeading = !part.empty() && std::all_of(part.begin(), part.end(), [](const Mark &m) {
            return m.kind == MarkKind::Side || m.kind == MarkKind::Name || m.kind == MarkKind::Region || m.kind == MarkKind::And;
        });
        if (!isHeading)
            return false;
        const bool hasName = std::any_of(part.begin(), part.end(), [](const Mark &m) { return m.kind == MarkKind::Name; });
        const bool hasRegion = std::any_of(part.begin(), part.end(), [](const Mark &m) { return m.kind == MarkKind::Region; });
        m_head.reset();
        for (const Mark &mark : part)
            if (mark.kind == MarkKind::Side)
                m_head = SideSaid{mark.side, stretchOf(mark)};
        if (!hasName && !hasRegion) {
            m_headSide = m_head->side;
            m_head.reset();
            return true;
        }
        m_headSide.reset();
        m_last = {};
        for (const Mark &mark : part)
            if (mark.kind == MarkKind::Name)
                m_last.names.push_back(mark);
        m_last.headSide = m_head;
        return true;
    }

    // 'and' joins names to a list; anywhere else a clause may end there.
    void readPart(const std::vector<Mark> &part)
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

    static bool isPlace(const Mark &mark)
    {
        return mark.kind == MarkKind::Name || mark.kind == MarkKind::Region || mark.kind == MarkKind::NoLevel;
    }

    void readMarks(const std::vector<Mark> &marks)
    {
        if (marks.empty())
            return;
        for (Clause &clause : clausesOf(marks, m_words, m_headSide ? HeadSide::Yes : HeadSide::No))
            readClause(clause);
    }

    static Stretch stretchOfClause(const Clause &clause)
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

    void readClause(Clause &clause)
    {
        const Stretch at = stretchOfClause(clause);
        if (clause.contested) {
            askContested(*clause.contested, at);
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

    void askContested(const Mark &side, Stretch at)
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

    // Mistakes first: what makes no sense need not be asked about. Of questions the first; the answer may settle the others.
    void add(const Issues &issues, Stretch at)
    {
        for (const LineMistake &mistake : issues.mistakes())
            m_out.chips.push_back({at.begin, at.end, mistake});
        if (issues.mistakes().empty() && !issues.questions().empty())
            m_out.chips.push_back({at.begin, at.end, issues.questions().front()});
    }

    void readMovement(const Clause &clause, Stretch at)
    {
        Issues issues(m_line);
        std::optional<SideSaid> head;
        if (m_headSide)
            head = SideSaid{*m_headSide, {}};
        if (!head && m_last.headSide)
            head = m_last.headSide;
        const auto measures = measuresOf(clause, head, m_words, issues);
        add(issues, at);
        for (const Measure &measure : measures)
            m_out.chips.push_back({at.begin, at.end, measure});
        m_last.movement = clause.movement;
        m_last.names.clear();
        m_last.findings.clear();
        m_last.isPending = issues.any();
    }

    // Side words of one clause: one for all of it, or several with their own words each.
    void readNames(const Clause &clause, Stretch at)
    {
        m_last = {};
        m_last.names = clause.names;
        if (clause.sides.size() > 1) {
            const auto parts = sideParts(clause);
            if (parts.empty()) {
                Issues issues(m_line);
                issues.fault(AskAbout::Side, LineFault::BothSides,
                    spanOf(stretchOf(clause.sides.front()), stretchOf(clause.sides.back())));
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

    void readFinding(
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

    bool areJoints(const std::vector<Mark> &names) const
    {
        return std::all_of(names.begin(), names.end(), [&](const Mark &name) {
            return name.isSure && m_words.atlas().structures()[name.structures.front()].kind == Kind::Joint;
        });
    }

    void addFindings(const Mark &name, const std::optional<SideSaid> &side, const Said &said, std::vector<Finding> &findings,
        Issues &issues) const
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

    void takeSame(Said &said, Stretch at, Issues &issues) const
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

    void askWhat(Stretch at, Issues &issues) const
    {
        const std::string typed = issues.textOf(at);
        LineQuestion &question = issues.ask(AskAbout::Amount, Doubt::NothingSaid, at);
        for (const LineWord word : {LineWord::Tender, LineWord::Stiff, LineWord::Clear})
            for (const auto &[w, says] : m_words.list().words)
                if (w == word)
                    question.choices.push_back({typed + " " + says.front(), {}});
    }

    // A clause without a structure: of the one before, on a side of its own, at a spot of its own, or added to the finding.
    void readContinued(const Clause &clause, Stretch at)
    {
        const bool hasSpot = std::any_of(clause.marks.begin(), clause.marks.end(),
            [](const Mark &m) { return m.kind == MarkKind::Spot || m.kind == MarkKind::At; });
        if (m_last.movement && m_last.names.empty())
            return continueMovement(clause, at);
        if (m_last.names.empty())
            return readOrphan(clause, at);
        const bool isOpen = m_last.isPending && std::any_of(m_last.names.begin(), m_last.names.end(),
            [](const Mark &name) { return !name.isSure; });
        if (isOpen)
            return; // what the name means is asked already
        Clause whole = clause;
        whole.names = m_last.names;
        whole.of = Clause::Of::Names;
        whole.firstSaid = 0;
        if (!clause.sides.empty())
            return readOnSides(whole, at);
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

    void readOnSides(const Clause &whole, Stretch at)
    {
        const auto parts = sideParts(whole);
        if (parts.empty()) {
            Issues issues(m_line);
            issues.fault(AskAbout::Side, LineFault::BothSides,
                spanOf(stretchOf(whole.sides.front()), stretchOf(whole.sides.back())));
            add(issues, at);
            return;
        }
        const auto names = m_last.names;
        if (parts.size() == 1) {
            readFinding(names, SideSaid{whole.sides.front().side, stretchOf(whole.sides.front())}, whole.marks, at);
            return;
        }
        for (const SidePart &part : parts)
            readFinding(names, SideSaid{part.side.side, stretchOf(part.side)}, part.marks, at);
    }

    void addToLast(const Clause &clause, Stretch at)
    {
        Issues issues(m_line);
        Said said = saidBy(clause.marks, true, areJoints(m_last.names), m_words, issues);
        said.what.refersTo = targetsOf(said, m_words, issues);
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
        for (std::size_t i = 0; i < merged.size(); ++i) {
            LineChip &chip = m_out.chips[m_last.findings[i]];
            chip.end = std::max(chip.end, at.end);
            chip.is = std::move(merged[i]);
        }
    }

    void continueMovement(Clause clause, Stretch at)
    {
        const bool hasNumber = std::any_of(
            clause.marks.begin(), clause.marks.end(), [](const Mark &m) { return m.kind == MarkKind::Number; });
        if (!hasNumber)
            return readOrphan(clause, at);
        clause.of = Clause::Of::Movement;
        clause.movement = m_last.movement;
        readMovement(clause, at);
    }

    // Nothing stands before it that it could speak of.
    void readOrphan(const Clause &clause, Stretch at)
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

    // 'l 5': the vertebra, or left and a grade.
    void askLevel(const Mark &side, const Mark &number, Issues &issues) const
    {
        const Stretch at = spanOf(stretchOf(side), stretchOf(number));
        const std::string letter = issues.textOf(stretchOf(side));
        const std::string digits = issues.textOf(stretchOf(number));
        LineQuestion &question = issues.ask(AskAbout::Structure, Doubt::LevelOrSide, at);
        const auto tokens = tokensOf(letter + digits);
        if (const auto level = levelAt(tokens, 0, m_words))
            for (const std::size_t structure : level->structures)
                question.choices.push_back({m_words.names().sureName(m_words.atlas(), structure),
                    m_words.atlas().structures()[structure].id});
        if (!number.upTo)
            question.choices.push_back({phraseOf(side.side, m_words) + " " + digits, {}});
    }

    struct Last {
        std::vector<Mark> names;
        std::optional<SideSaid> side;
        std::optional<SideSaid> headSide; // of a heading with a structure
        std::vector<std::size_t> findings; // chips
        std::optional<Mark> movement;
        bool isPending = false; // something about it is asked
    };

    std::string_view m_line;
    const LineWords &m_words;
    LineReading m_out;
    Last m_last; // what was spoken of last
    std::vector<std::size_t> m_before; // chips of the findings of the clause before
    std::optional<SideWord> m_headSide;
    std::optional<SideSaid> m_head;
};

template <class T> std::vector<T> allOf(const std::vector<LineChip> &chips)
{
    std::vector<T> out;
    for (const LineChip &chip : chips)
        if (const T *is = std::get_if<T>(&chip.is))
            out.push_back(*is);
    return out;
}

} // namespace

std::vector<Finding> LineReading::findings() const
{
    return allOf<Finding>(chips);
}
std::vector<Measure> LineReading::measures() const
{
    return allOf<Measure>(chips);
}
std::vector<LineQuestion> LineReading::questions() const
{
    return allOf<LineQuestion>(chips);
}
std::vector<LineMistake> LineReading::mistakes() const
{
    return allOf<LineMistake>(chips);
}

LineReading readLine(std::string_view line, const LineWords &words)
{
    return Reader(line, words).run();
}

std::string answered(std::string_view line, const LineQuestion &question, std::size_t choice)
{
    if (choice >= question.choices.size() || question.end > line.size() || question.begin > question.end)
        return std::string(line);
    std::string out(line.substr(0, question.begin));
    out += question.choices[choice].insert;
    out += line.substr(question.end);
    return out;
}

} // namespace raphe
