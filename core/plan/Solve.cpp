#include "core/plan/Solve.h"

#include "core/plan/Lanes.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace raphe::plan {

namespace {

using Mask = std::uint32_t;

// What the step before needs to know of the first step of a tail.
struct Head {
    std::size_t position = 0;
    int cover = 0;
    int deepArea = 0;
    bool operator==(const Head &) const = default;
};

int restBetween(const ProblemTimes &times, int deepArea, int nextDeepArea)
{
    return deepArea != 0 && deepArea == nextDeepArea ? times.rest : 0;
}
int uncoverBetween(const ProblemTimes &times, int cover, int nextCover)
{
    return nextCover != 0 && nextCover != cover ? times.uncover : 0;
}

class Search {
public:
    // `chosen`: the places searched, the worthiest first.
    Search(const Problem &problem, std::vector<std::size_t> chosen) : m_problem(problem), m_chosen(std::move(chosen))
    {
        const std::size_t n = m_chosen.size();
        m_after.assign(n, 0);
        for (const auto &[first, second] : problem.before) {
            const auto a = std::find(m_chosen.begin(), m_chosen.end(), first) - m_chosen.begin();
            const auto b = std::find(m_chosen.begin(), m_chosen.end(), second) - m_chosen.begin();
            if (static_cast<std::size_t>(a) < n && static_cast<std::size_t>(b) < n)
                m_after[static_cast<std::size_t>(b)] |= Mask(1) << static_cast<unsigned>(a);
        }
        m_headsOf.resize(n);
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t p = 0; p < positionCount; ++p)
                if (((place(i).positions >> p) & 1U) != 0)
                    m_headsOf[i].push_back(headFor({p, place(i).cover[p], place(i).deepArea}));
        m_between.resize(m_heads.size() * m_heads.size());
        for (std::size_t a = 0; a < m_heads.size(); ++a)
            for (std::size_t b = 0; b < m_heads.size(); ++b)
                m_between[a * m_heads.size() + b] = between(m_heads[a], m_heads[b]);
    }

    Solution run()
    {
        fillTails();
        Solution best;
        Mask bestSet = 0;
        Mask pinned = 0;
        for (const std::size_t p : m_problem.pinned) {
            const auto at = std::find(m_chosen.begin(), m_chosen.end(), p) - m_chosen.begin();
            if (static_cast<std::size_t>(at) == m_chosen.size())
                return best; // cannot be reached
            pinned |= Mask(1) << static_cast<unsigned>(at);
        }
        for (Mask set = 0; set < (Mask(1) << m_chosen.size()); ++set) {
            if ((set & pinned) != pinned)
                continue;
            const Lanes lanes = set == 0 ? noTailButNow() : fromStart(set);
            for (int turns = 0; turns <= m_problem.turnsAtMost; ++turns) {
                const int seconds = secondsOf(lanes, turns);
                if (seconds > m_problem.seconds)
                    continue;
                const int value = valueOf(set);
                const auto rank = std::tuple(-value, turns, seconds);
                const auto bestRank = std::tuple(-best.value, best.turns, best.seconds);
                if (!best.isPossible || rank < bestRank || (rank == bestRank && isWorthier(set, bestSet))) {
                    best.isPossible = true;
                    best.value = value;
                    best.turns = turns;
                    best.seconds = seconds;
                    bestSet = set;
                }
                break; // more turns of the same set are no better
            }
        }
        if (best.isPossible)
            best.steps = stepsOf(bestSet, best);
        best.bound = best.value;
        return best;
    }

private:
    // Turns and seconds from one head to another.
    struct Between {
        bool turn = false;
        int seconds = 0;
    };

    const ProblemPlace &place(std::size_t i) const { return m_problem.places[m_chosen[i]]; }
    static Lanes noTailButNow() { return noTail & ~Lanes(0xffffU); }

    std::size_t headFor(const Head &head)
    {
        const auto it = std::find(m_heads.begin(), m_heads.end(), head);
        if (it != m_heads.end())
            return static_cast<std::size_t>(it - m_heads.begin());
        m_heads.push_back(head);
        return m_heads.size() - 1;
    }

    Between between(const Head &a, const Head &b) const
    {
        return {a.position != b.position,
            m_problem.times.turn[a.position][b.position] + uncoverBetween(m_problem.times, a.cover, b.cover)
                + restBetween(m_problem.times, a.deepArea, b.deepArea)};
    }

    Lanes &tail(Mask set, std::size_t head, bool oiled) { return m_tails[(set * m_heads.size() + head) * 2 + (oiled ? 1 : 0)]; }

    static Lanes joined(const Between &step, Lanes lanes) { return later(step.turn ? withTurn(lanes) : lanes, step.seconds); }

    // Tails of every set, each from the tails of the set without its first place.
    void fillTails()
    {
        const std::size_t heads = m_heads.size();
        const std::size_t n = m_chosen.size();
        m_tails.assign((std::size_t(1) << n) * heads * 2, noTail);
        std::vector<std::size_t> there;
        std::vector<Mask> knownFor(heads, ~Mask(0)); // the set for which `following` was found last
        std::vector<Lanes> following(heads * 2);
        for (Mask set = 0; set < (Mask(1) << n); ++set) {
            there.clear();
            for (std::size_t h = 0; h < heads; ++h)
                if (tail(set, h, false) != noTail || tail(set, h, true) != noTail)
                    there.push_back(h);
            if (set != 0 && there.empty())
                continue;
            for (std::size_t i = 0; i < n; ++i) {
                const Mask bit = Mask(1) << static_cast<unsigned>(i);
                if ((set & bit) != 0 || (m_after[i] & set) != 0)
                    continue;
                for (const std::size_t a : m_headsOf[i]) {
                    if (std::exchange(knownFor[a], set) != set)
                        for (const bool oiled : {false, true})
                            following[a * 2 + (oiled ? 1 : 0)] = leastAfter(a, set, there, oiled);
                    for (const bool oiled : {false, true}) {
                        const Lanes lanes = limited(later(following[a * 2 + (oilAfter(i, oiled) ? 1 : 0)], secondsAt(i, oiled)));
                        Lanes &into = tail(set | bit, a, oiled);
                        into = earliest(into, lanes);
                    }
                }
            }
        }
    }

    // The least that follows a step with head `a` when these are the heads of the tails of `set`.
    Lanes leastAfter(std::size_t a, Mask set, const std::vector<std::size_t> &there, bool oiled)
    {
        if (set == 0)
            return noTailButNow();
        Lanes least = noTail;
        for (const std::size_t b : there)
            least = earliest(least, joined(m_between[a * m_heads.size() + b], tail(set, b, oiled)));
        return least;
    }

    // What takes longer than there is time for is no tail.
    Lanes limited(Lanes lanes) const
    {
        const Lanes over = ((lanes | highs) - static_cast<Lanes>(m_problem.seconds + 1) * ones) & highs;
        const Lanes mask = (over >> 15U) * 0xffffU;
        return (lanes & ~mask) | (noTail & mask);
    }

    bool oilAfter(std::size_t i, bool oiled) const { return place(i).skin == Skin::Any ? oiled : place(i).skin == Skin::Oiled; }
    int wipeAt(std::size_t i, bool oiled) const { return oiled && place(i).skin == Skin::Dry ? m_problem.times.wipe : 0; }
    int secondsAt(std::size_t i, bool oiled) const { return place(i).seconds + wipeAt(i, oiled); }

    Between fromStartTo(std::size_t head) const
    {
        const ProblemStart &start = m_problem.start;
        const Head &to = m_heads[head];
        Between out;
        if (start.position && *start.position != to.position)
            out = {true, m_problem.times.turn[*start.position][to.position]};
        out.seconds +=
            uncoverBetween(m_problem.times, start.cover, to.cover) + restBetween(m_problem.times, start.deepArea, to.deepArea);
        return out;
    }

    Lanes fromStart(Mask set)
    {
        Lanes least = noTail;
        for (std::size_t h = 0; h < m_heads.size(); ++h)
            least = earliest(least, joined(fromStartTo(h), tail(set, h, m_problem.start.oiled)));
        return least;
    }

    int valueOf(Mask set) const
    {
        int sum = 0;
        for (std::size_t i = 0; i < m_chosen.size(); ++i)
            sum += ((set >> i) & 1U) != 0 ? place(i).value : 0;
        return sum;
    }
    // Of two sets that are as good: the one with the first place that only one of them has.
    static bool isWorthier(Mask a, Mask b)
    {
        const Mask differ = a ^ b;
        return (a & differ & (~differ + 1)) != 0;
    }

    // The steps from the first on; of several that lead to the same end, the worthier place first.
    std::vector<ProblemStep> stepsOf(Mask set, const Solution &best)
    {
        std::vector<ProblemStep> out;
        int turns = best.turns;
        int seconds = best.seconds;
        bool oiled = m_problem.start.oiled;
        std::optional<std::size_t> last;
        while (set != 0) {
            bool isFound = false;
            for (std::size_t i = 0; i < m_chosen.size() && !isFound; ++i) {
                if (((set >> i) & 1U) == 0)
                    continue;
                for (const std::size_t h : m_headsOf[i]) {
                    const Between step = last ? m_between[*last * m_heads.size() + h] : fromStartTo(h);
                    const int turnsLeft = turns - (step.turn ? 1 : 0);
                    const int secondsLeft = seconds - step.seconds;
                    if (turnsLeft < 0 || !startsWith(i, h, set, oiled, turnsLeft, secondsLeft))
                        continue;
                    out.push_back(stepTo(i, h, last, oiled));
                    turns = turnsLeft;
                    seconds = secondsLeft - secondsAt(i, oiled);
                    oiled = oilAfter(i, oiled);
                    last = h;
                    set &= ~(Mask(1) << static_cast<unsigned>(i));
                    isFound = true;
                    break;
                }
            }
            if (!isFound)
                return {}; // cannot be: the tail was reached
        }
        return out;
    }

    // Whether a tail of these turns and seconds begins with this place.
    bool startsWith(std::size_t i, std::size_t h, Mask set, bool oiled, int turns, int seconds)
    {
        const Mask rest = set & ~(Mask(1) << static_cast<unsigned>(i));
        if ((m_after[i] & rest) != 0)
            return false;
        const int left = seconds - secondsAt(i, oiled);
        if (rest == 0)
            return turns == 0 && left == 0;
        const bool oil = oilAfter(i, oiled);
        for (std::size_t b = 0; b < m_heads.size(); ++b) {
            const Between &step = m_between[h * m_heads.size() + b];
            const int turnsLeft = turns - (step.turn ? 1 : 0);
            if (turnsLeft >= 0 && secondsOf(tail(rest, b, oil), turnsLeft) == left - step.seconds)
                return true;
        }
        return false;
    }

    ProblemStep stepTo(std::size_t i, std::size_t h, std::optional<std::size_t> last, bool oiled) const
    {
        const ProblemTimes &times = m_problem.times;
        const ProblemStart &start = m_problem.start;
        const Head &to = m_heads[h];
        const std::optional<std::size_t> position = last ? std::optional(m_heads[*last].position) : start.position;
        ProblemStep out;
        out.place = m_chosen[i];
        out.position = to.position;
        out.turn = position ? times.turn[*position][to.position] : 0;
        out.wipe = wipeAt(i, oiled);
        out.uncover = uncoverBetween(times, last ? m_heads[*last].cover : start.cover, to.cover);
        out.rest = restBetween(times, last ? m_heads[*last].deepArea : start.deepArea, to.deepArea);
        return out;
    }

    const Problem &m_problem;
    std::vector<std::size_t> m_chosen;
    std::vector<Mask> m_after; // of each place, what must not come after it
    std::vector<Head> m_heads;
    std::vector<std::vector<std::size_t>> m_headsOf; // of each place
    std::vector<Between> m_between;
    std::vector<Lanes> m_tails; // by set, head, and whether there is oil when it begins
};

// No plan is worth more: as if nothing took time but the work, and the last place could be worked in part.
int boundOf(const Problem &problem, const std::vector<std::size_t> &byWorth)
{
    int left = problem.seconds;
    double sum = 0;
    for (const std::size_t i : byWorth) {
        const ProblemPlace &place = problem.places[i];
        if (place.seconds > left)
            return static_cast<int>(sum + static_cast<double>(place.value) * left / place.seconds);
        left -= place.seconds;
        sum += place.value;
    }
    return static_cast<int>(sum);
}

} // namespace

Solution solve(const Problem &problem)
{
    std::vector<std::size_t> reached;
    for (std::size_t i = 0; i < problem.places.size(); ++i)
        if (problem.places[i].positions != 0)
            reached.push_back(i);
    const auto isPinned = [&](std::size_t i) {
        return std::find(problem.pinned.begin(), problem.pinned.end(), i) != problem.pinned.end();
    };
    std::vector<std::size_t> chosen = reached;
    if (reached.size() > exactAtMost) {
        std::stable_sort(reached.begin(), reached.end(), [&](std::size_t a, std::size_t b) {
            const ProblemPlace &x = problem.places[a];
            const ProblemPlace &y = problem.places[b];
            return static_cast<std::int64_t>(x.value) * y.seconds > static_cast<std::int64_t>(y.value) * x.seconds;
        });
        chosen = reached;
        std::stable_partition(chosen.begin(), chosen.end(), isPinned);
        chosen.resize(exactAtMost);
    }
    std::stable_sort(chosen.begin(), chosen.end(),
        [&](std::size_t a, std::size_t b) { return problem.places[a].value > problem.places[b].value; });
    Solution out = Search(problem, std::move(chosen)).run();
    if (reached.size() > exactAtMost && out.isPossible)
        out.bound = std::max(out.value, boundOf(problem, reached));
    return out;
}

Solution priced(const Problem &problem, const std::vector<std::pair<std::size_t, std::size_t>> &placesAndPositions)
{
    Solution out;
    out.isPossible = true;
    std::optional<std::size_t> position = problem.start.position;
    bool oiled = problem.start.oiled;
    int cover = problem.start.cover;
    int deepArea = problem.start.deepArea;
    for (const auto &[index, at] : placesAndPositions) {
        const ProblemPlace &place = problem.places[index];
        ProblemStep step;
        step.place = index;
        step.position = at;
        if (position && *position != at) {
            step.turn = problem.times.turn[*position][at];
            ++out.turns;
        }
        step.wipe = oiled && place.skin == Skin::Dry ? problem.times.wipe : 0;
        step.uncover = uncoverBetween(problem.times, cover, place.cover[at]);
        step.rest = restBetween(problem.times, deepArea, place.deepArea);
        out.seconds += step.turn + step.wipe + step.uncover + step.rest + place.seconds;
        out.value += place.value;
        oiled = place.skin == Skin::Any ? oiled : place.skin == Skin::Oiled;
        position = at;
        cover = place.cover[at];
        deepArea = place.deepArea;
        out.steps.push_back(step);
    }
    out.bound = out.value;
    return out;
}

} // namespace raphe::plan
