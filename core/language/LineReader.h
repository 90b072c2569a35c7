// Turns the clauses of a line into chips; readLine (LineReading.h) is its only user. One object a line.
#pragma once

#include "core/language/Clause.h"
#include "core/language/Issue.h"
#include "core/language/Places.h"

#include <optional>
#include <string_view>
#include <vector>

namespace raphe::language {

class LineReader {
public:
    LineReader(std::string_view line, const LineWords &words) : m_line(line), m_words(words) { }

    [[nodiscard]] LineReading run();

private:
    // 'right:' gives the side to every clause of the line, 'si:' the structure.
    bool takeHeading(const std::vector<Mark> &part);
    // 'and' joins names to a list; anywhere else a clause may end there.
    void readPart(const std::vector<Mark> &part);
    [[nodiscard]] static bool isPlace(const Mark &mark);
    void readMarks(const std::vector<Mark> &marks);
    [[nodiscard]] static Stretch stretchOfClause(const Clause &clause);
    void readClause(Clause &clause);
    void askBeside(const Mark &name, Stretch at);
    void askContested(const Mark &side, Stretch at);
    // Mistakes first: what makes no sense need not be asked about. Of questions the first; the answer may settle the others.
    void add(const Issues &issues, Stretch at);
    void readMovement(const Clause &clause, Stretch at);
    // Side words of one clause: one for all of it, or several with their own words each.
    void readNames(const Clause &clause, Stretch at);
    void readFinding(
        const std::vector<Mark> &names, const std::optional<SideSaid> &side, const std::vector<Mark> &marks, Stretch at);
    // Each part on its side; when anything about one of them is open, none is taken.
    void readParts(const std::vector<Mark> &names, const std::vector<SidePart> &parts, Stretch at);
    // A side other than the heading's: a mistake is added.
    bool isAgainstHeading(const Clause &clause, Stretch at);
    [[nodiscard]] bool areJoints(const std::vector<Mark> &names) const;
    void addFindings(const Mark &name, const std::optional<SideSaid> &side, const Said &said, std::vector<Finding> &findings,
        Issues &issues) const;
    void takeSame(Said &said, const std::vector<Mark> &names, Stretch at, Issues &issues) const;
    void askWhat(Stretch at, Issues &issues) const;
    // A clause without a structure: of the one before, on a side of its own, at a spot of its own, or added to the finding.
    void readContinued(const Clause &clause, Stretch at);
    void readOnSides(const Clause &whole, Stretch at);
    void addToLast(const Clause &clause, Stretch at);
    void continueMovement(Clause clause, Stretch at);
    // Nothing stands before it that it could speak of.
    void readOrphan(const Clause &clause, Stretch at);
    // 'l 5': the vertebra, or left and a grade.
    void askLevel(const Mark &side, const Mark &number, Issues &issues) const;

    struct Last {
        std::vector<Mark> names;
        std::optional<SideSaid> side;
        std::optional<SideSaid> headSide; // of a heading with a structure
        std::optional<std::size_t> headRegion; // the joint that the heading names
        std::vector<std::size_t> findings; // chips
        std::optional<Mark> movement;
        bool isPending = false; // something about it is asked
        bool isOfSeveralSides = false; // each with its own words: what follows may be of either
    };

    std::string_view m_line;
    const LineWords &m_words;
    LineReading m_out;
    Last m_last; // what was spoken of last
    std::vector<std::size_t> m_before; // chips of the findings of the clause before
    std::vector<std::size_t> m_current; // and of this one
    std::optional<SideWord> m_headSide;
};

} // namespace raphe::language
