#include "core/language/Clause.h"

#include <algorithm>
#include <array>
#include <map>

namespace raphe::language {

namespace {

// Marks before a name that may belong to it; our choice, beyond what is typed before a name.
constexpr std::size_t mostBefore = 8;

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

bool isUnderstood(const Mark &mark)
{
    return saysSomething(mark) && mark.kind != MarkKind::Unknown;
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
            out.back().isBeside = i > 0 && isBeside(m_subjects[i - 1], m_subjects[i])
                && std::none_of(out[i - 1].marks.begin(), out[i - 1].marks.end(), isUnderstood);
            if (m_contested[i])
                out.back().contested = m_marks[*m_contested[i]];
        }
        return out;
    }

private:
    // Nothing but sides and words that are not known parts the two.
    bool isBeside(const Subject &before, const Subject &after) const
    {
        const auto from = m_marks.begin() + static_cast<std::ptrdiff_t>(before.last + 1);
        const auto to = m_marks.begin() + static_cast<std::ptrdiff_t>(after.first);
        return !before.isMovement && !after.isMovement && std::none_of(from, to, isUnderstood)
            && std::none_of(from, to, [](const Mark &mark) { return mark.kind == MarkKind::And; });
    }

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

    // Where each clause starts: of all ways that give every structure its side, the one that leaves fewest without words; marks
    // go to the structure before them where both will do. A side word that two ways place differently, or none, is contested.
    void chooseStarts(std::vector<std::size_t> &starts)
    {
        m_contested.assign(m_subjects.size(), {});
        const auto ways = waysFromEnd();
        if (!ways.front().begin()->second)
            return splitAsTyped(starts);
        for (std::size_t i = 0; i + 1 < m_subjects.size(); ++i) {
            std::optional<std::size_t> chosen;
            for (auto next = ways[i + 1].rbegin(); next != ways[i + 1].rend(); ++next) {
                if (sumOf(rankOf(i, starts[i], next->first), next->second) != ways[i].at(starts[i]))
                    continue;
                if (!chosen)
                    chosen = next->first;
                else
                    contestBetween(next->first, *chosen);
            }
            starts[i + 1] = *chosen;
        }
    }

    // Of each clause and each mark it could start with, the best rank from there to the end of the line; nothing: no way.
    using Rank = std::optional<std::pair<int, int>>;
    using Ways = std::map<std::size_t, Rank>;
    std::vector<Ways> waysFromEnd() const
    {
        std::vector<Ways> ways(m_subjects.size());
        for (std::size_t i = m_subjects.size(); i-- > 0;)
            for (const std::size_t start : startsOf(i)) {
                Rank best;
                if (i + 1 == m_subjects.size())
                    best = rankOf(i, start, m_marks.size());
                else
                    for (const auto &[next, rest] : ways[i + 1])
                        if (const Rank rank = sumOf(rankOf(i, start, next), rest); rank && (!best || *rank < *best))
                            best = rank;
                ways[i].emplace(start, best);
            }
        return ways;
    }

    std::vector<std::size_t> startsOf(std::size_t i) const
    {
        if (i == 0)
            return {0};
        std::vector<std::size_t> out;
        for (std::size_t start = m_subjects[i - 1].last + 1; start <= m_subjects[i].first; ++start)
            if (start + mostBefore >= m_subjects[i].first)
                out.push_back(start);
        return out;
    }

    Rank rankOf(std::size_t i, std::size_t from, std::size_t to) const
    {
        const auto score = scoreOf(from, to, m_subjects[i]);
        return score ? Rank(std::pair(score->empty, score->severalSides)) : Rank();
    }

    static Rank sumOf(const Rank &a, const Rank &b)
    {
        return a && b ? Rank(std::pair(a->first + b->first, a->second + b->second)) : Rank();
    }

    // No way fits: a side word directly before a name opens its clause, all else stays with the name before.
    void splitAsTyped(std::vector<std::size_t> &starts)
    {
        for (std::size_t i = 1; i < m_subjects.size(); ++i) {
            std::size_t start = m_subjects[i].first;
            if (start > m_subjects[i - 1].last + 1 && m_marks[start - 1].kind == MarkKind::Side)
                --start;
            starts[i] = start;
        }
        for (std::size_t i = 1; i < m_subjects.size(); ++i)
            contestIfNeeded(i, starts);
    }

    void contestBetween(std::size_t from, std::size_t to)
    {
        for (std::size_t at = from; at < to; ++at)
            if (m_marks[at].kind == MarkKind::Side)
                contest(at);
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

    const std::vector<Mark> &m_marks;
    const LineWords &m_words;
    HeadSide m_head;
    std::vector<Subject> m_subjects;
    std::vector<std::optional<std::size_t>> m_contested;
};

} // namespace

std::vector<Clause> clausesOf(const std::vector<Mark> &marks, const LineWords &words, HeadSide head)
{
    return Splitter(marks, words, head).run();
}

} // namespace raphe::language
