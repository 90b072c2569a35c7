#include "core/language/Clause.h"

#include <algorithm>
#include <array>

namespace raphe::language {

namespace {

// What a clause is about: a name, a list of names, or a joint with its movement.
struct Subject {
    std::size_t first = 0; // marks
    std::size_t last = 0;
    bool isMovement = false;
};

bool isName(const Mark &mark)
{
    return mark.kind == MarkKind::Name || mark.kind == MarkKind::Region || mark.kind == MarkKind::NoLevel;
}

bool saysSomething(const Mark &mark)
{
    return mark.kind != MarkKind::Side && mark.kind != MarkKind::And;
}

class Splitter {
public:
    Splitter(const std::vector<Mark> &marks, const LineWords &words, HeadSide head) : m_marks(marks), m_words(words), m_head(head)
    {
        for (std::size_t i = 0; i < marks.size(); ++i)
            if (const auto subject = subjectAt(i)) {
                m_subjects.push_back(*subject);
                i = subject->last;
            }
    }

    std::vector<Clause> run()
    {
        if (m_subjects.empty())
            return {clauseOf(0, m_marks.size(), nullptr)};
        std::vector<std::size_t> starts(m_subjects.size(), 0);
        chooseStarts(starts);
        std::vector<Clause> out;
        for (std::size_t i = 0; i < m_subjects.size(); ++i) {
            out.push_back(clauseOf(starts[i], i + 1 < starts.size() ? starts[i + 1] : m_marks.size(), &m_subjects[i]));
            if (m_contested[i])
                out.back().contested = m_marks[*m_contested[i]];
        }
        return out;
    }

private:
    std::optional<Subject> subjectAt(std::size_t at) const
    {
        const Mark &mark = m_marks[at];
        if (mark.kind == MarkKind::Move)
            return Subject{at, at, true};
        if (!isName(mark))
            return {};
        if (mark.region) {
            std::size_t next = at + 1;
            while (next < m_marks.size() && (m_marks[next].kind == MarkKind::Side || m_marks[next].kind == MarkKind::Mode))
                ++next;
            if (next < m_marks.size() && m_marks[next].kind == MarkKind::Move)
                return Subject{at, next, true};
        }
        Subject list{at, at, false};
        while (list.last + 2 < m_marks.size() && m_marks[list.last + 1].kind == MarkKind::And && isName(m_marks[list.last + 2])
            && !subjectIsMovement(list.last + 2))
            list.last += 2;
        return list;
    }

    bool subjectIsMovement(std::size_t at) const
    {
        return m_marks[at].region && at + 1 < m_marks.size() && m_marks[at + 1].kind == MarkKind::Move;
    }

    Clause clauseOf(std::size_t from, std::size_t to, const Subject *subject) const
    {
        Clause out;
        if (subject)
            out.of = subject->isMovement ? Clause::Of::Movement : Clause::Of::Names;
        for (std::size_t i = from; i < to; ++i) {
            const Mark &mark = m_marks[i];
            const bool isInSubject = subject && i >= subject->first && i <= subject->last;
            if (isInSubject && subject->isMovement && i == subject->last) {
                out.movement = mark;
                out.movement->begin = m_marks[subject->first].kind == MarkKind::Move ? mark.begin : m_marks[subject->first].begin;
                continue;
            }
            if (isInSubject && subject->isMovement && i == subject->first)
                continue;
            if (isInSubject && !subject->isMovement) {
                if (isName(mark))
                    out.names.push_back(mark);
                continue;
            }
            if (mark.kind == MarkKind::And)
                continue;
            if (subject && i > subject->last && !out.firstSaid)
                out.firstSaid = out.marks.size();
            if (mark.kind == MarkKind::Side)
                out.sides.push_back(mark);
            out.marks.push_back(mark);
        }
        return out;
    }

    // How well the marks from `from` to `to` go with a subject: lower is better, nothing is no reading.
    struct Score {
        int severalSides = 0; // of one place, each with its own words
        int empty = 0; // places of which nothing is said
    };
    std::optional<Score> scoreOf(std::size_t from, std::size_t to, const Subject &subject) const
    {
        for (std::size_t i = from; i < subject.first; ++i)
            if (m_marks[i].bindsLeft)
                return {};
        const Clause clause = clauseOf(from, to, &subject);
        return subject.isMovement ? scoreOfMovement(clause) : scoreOfNames(clause);
    }

    std::optional<Score> scoreOfNames(const Clause &clause) const
    {
        Score out;
        bool isPaired = false;
        bool isMidline = true;
        for (const Mark &name : clause.names) {
            const Sidedness sidedness = sidednessOf(name, m_words);
            isPaired = isPaired || sidedness == Sidedness::Paired;
            isMidline = isMidline && sidedness == Sidedness::Midline;
        }
        const std::size_t sides = clause.sides.size();
        if (sides == 0 && isPaired && m_head == HeadSide::No)
            return {};
        if (sides > 0 && isMidline && clause.sides.front().side != SideWord::Midline)
            return {};
        if (sides > 1) {
            const auto parts = sideParts(clause);
            if (parts.empty())
                return {};
            for (const SidePart &part : parts) {
                if (saysTwice(part.marks))
                    return {};
                out.empty += part.marks.empty() ? 1 : 0;
            }
            out.severalSides = 1;
            return out;
        }
        if (saysTwice(clause.marks))
            return {};
        out.empty = std::none_of(clause.marks.begin(), clause.marks.end(), saysSomething) ? 1 : 0;
        return out;
    }

    std::optional<Score> scoreOfMovement(const Clause &clause) const
    {
        std::string order;
        for (const Mark &mark : clause.marks)
            if (mark.kind == MarkKind::Side || mark.kind == MarkKind::Number)
                order += mark.kind == MarkKind::Side ? 's' : 'n';
        const bool hasSides = std::any_of(clause.movement->movements.begin(), clause.movement->movements.end(),
            [&](std::size_t m) { return m_words.list().movements[m].hasSides; });
        if (!hasSides || m_head == HeadSide::Yes)
            return order == "n" || (hasSides && isRow(order)) ? std::optional(Score{}) : std::nullopt;
        return isRow(order) ? std::optional(Score{}) : std::nullopt;
    }

    static bool isRow(const std::string &order)
    {
        for (std::size_t i = 1; i < order.size(); ++i)
            if (order[i] == order[i - 1])
                return false;
        return !order.empty() && order.size() % 2 == 0;
    }

    // One quality twice is two findings.
    static bool saysTwice(const std::vector<Mark> &marks)
    {
        std::array<int, 3> graded{};
        for (const Mark &mark : marks)
            if (mark.kind == MarkKind::Grade && ++graded[static_cast<std::size_t>(mark.grade.quality)] > 1)
                return true;
        return false;
    }

    // Where each clause starts: of all ways that give every structure its side, the one that leaves none without words; marks go
    // to the structure before them where both will do. A side word that no way can place is contested.
    void chooseStarts(std::vector<std::size_t> &starts)
    {
        m_contested.assign(m_subjects.size(), {});
        m_count = 0;
        std::vector<std::size_t> trial(m_subjects.size(), 0);
        tryFrom(1, trial, {});
        if (m_count > 0) {
            starts = m_best;
            for (const std::size_t other : m_othersAt) // two ways that differ in a side
                contest(other);
            return;
        }
        for (std::size_t i = 1; i < m_subjects.size(); ++i) {
            const std::size_t from = m_subjects[i - 1].last + 1;
            std::size_t start = m_subjects[i].first;
            if (start > from && m_marks[start - 1].kind == MarkKind::Side)
                --start;
            starts[i] = start;
        }
        for (std::size_t i = 1; i < m_subjects.size(); ++i)
            contestIfNeeded(i, starts);
    }

    void contestIfNeeded(std::size_t i, const std::vector<std::size_t> &starts)
    {
        const std::size_t side = starts[i];
        const std::size_t end = i + 1 < starts.size() ? starts[i + 1] : m_marks.size();
        if (side >= m_subjects[i].first || m_marks[side].kind != MarkKind::Side)
            return;
        const bool leftLacks = !scoreOf(starts[i - 1], side, m_subjects[i - 1]).has_value();
        const bool leftTakes = scoreOf(starts[i - 1], m_subjects[i].first, m_subjects[i - 1]).has_value();
        const bool rightLacks = !scoreOf(m_subjects[i].first, end, m_subjects[i]).has_value();
        if (leftLacks && leftTakes && rightLacks)
            contest(side);
    }

    void contest(std::size_t side)
    {
        for (std::size_t i = 0; i + 1 < m_subjects.size(); ++i)
            if (side > m_subjects[i].last && side < m_subjects[i + 1].first) {
                m_contested[i] = side;
                m_contested[i + 1] = side;
            }
    }

    void tryFrom(std::size_t i, std::vector<std::size_t> &trial, Score sum)
    {
        if (m_tries > 20000) // a line that long is no line
            return;
        ++m_tries;
        if (i == m_subjects.size()) {
            if (const auto score = scoreOf(trial[i - 1], m_marks.size(), m_subjects[i - 1]))
                keep(trial, {sum.severalSides + score->severalSides, sum.empty + score->empty});
            return;
        }
        for (std::size_t start = m_subjects[i].first + 1; start-- > m_subjects[i - 1].last + 1;)
            if (const auto score = scoreOf(trial[i - 1], start, m_subjects[i - 1])) {
                trial[i] = start;
                tryFrom(i + 1, trial, {sum.severalSides + score->severalSides, sum.empty + score->empty});
            }
    }

    void keep(const std::vector<std::size_t> &trial, Score score)
    {
        const auto rank = std::pair(score.empty, score.severalSides);
        if (m_count > 0 && rank > m_bestRank)
            return;
        if (m_count > 0 && rank == m_bestRank) {
            noteOther(trial);
            return;
        }
        m_count = 1;
        m_best = trial;
        m_bestRank = rank;
        m_othersAt.clear();
    }

    void noteOther(const std::vector<std::size_t> &trial)
    {
        for (std::size_t i = 1; i < trial.size(); ++i)
            for (std::size_t at = std::min(trial[i], m_best[i]); at < std::max(trial[i], m_best[i]); ++at)
                if (m_marks[at].kind == MarkKind::Side)
                    m_othersAt.push_back(at);
    }

    const std::vector<Mark> &m_marks;
    const LineWords &m_words;
    HeadSide m_head;
    std::vector<Subject> m_subjects;
    std::vector<std::optional<std::size_t>> m_contested;
    std::vector<std::size_t> m_best;
    std::pair<int, int> m_bestRank;
    std::vector<std::size_t> m_othersAt;
    int m_count = 0;
    mutable int m_tries = 0;
};

} // namespace

Sidedness sidednessOf(const Mark &name, const LineWords &words)
{
    bool hasMidline = false;
    for (const std::size_t index : name.structures) {
        const Structure &s = words.atlas().structures()[index];
        if (s.paired)
            return Sidedness::Paired;
        if (words.atlas().isSpinalSegment(s.id))
            return Sidedness::Segment;
        hasMidline = true;
    }
    return hasMidline ? Sidedness::Midline : Sidedness::Segment;
}

std::vector<SidePart> sideParts(const Clause &clause)
{
    std::vector<SidePart> out;
    // Side first ('r t3 l t2') or side last ('t3 r t2 l'), seen from what stands behind the names.
    std::size_t from = clause.firstSaid.value_or(0);
    const bool isSideBeforeName = std::any_of(clause.marks.begin(), clause.marks.begin() + static_cast<std::ptrdiff_t>(from),
        [](const Mark &m) { return m.kind == MarkKind::Side; });
    const bool isSideLast = !isSideBeforeName && from < clause.marks.size() && clause.marks[from].kind != MarkKind::Side;
    std::vector<Mark> waiting;
    for (std::size_t i = 0; i < clause.marks.size(); ++i) {
        const Mark &mark = clause.marks[i];
        if (mark.kind != MarkKind::Side) {
            if (out.empty() || isSideLast)
                waiting.push_back(mark);
            else
                out.back().marks.push_back(mark);
            continue;
        }
        out.push_back({mark, std::move(waiting)});
        waiting.clear();
    }
    const bool isOneEmpty
        = out.size() > 1 && std::any_of(out.begin(), out.end(), [](const SidePart &part) { return part.marks.empty(); });
    if (isOneEmpty || (isSideLast && !waiting.empty()))
        return {};
    return out;
}

std::vector<Clause> clausesOf(const std::vector<Mark> &marks, const LineWords &words, HeadSide head)
{
    return Splitter(marks, words, head).run();
}

} // namespace raphe::language
