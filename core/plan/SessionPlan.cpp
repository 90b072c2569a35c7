#include "core/plan/SessionPlan.h"

#include "core/plan/PlanWords.h"
#include "core/plan/Solve.h"
#include "core/reasoning/Evidence.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace raphe {

namespace {

constexpr double valueScale = 100; // the score of what to treat first, as a whole number
constexpr std::string_view faceDown = "lying-face-down"; // what is stopped with it is every work in this position

// Everything in a request that has a side, to tell it from its mirror image.
auto sidesOf(const PlanRequest &r)
{
    return std::tuple(r.wish.barred, r.wish.byHand, r.wish.pinned, r.wish.dropped, r.wish.ordered, r.lying, r.earlier);
}

class Draft {
public:
    Draft(const Regions &regions, const Techniques &techniques, const Access &access, const Visit &visit,
        const PlanRequest &request, const Advice &advice)
        : m_regions(regions), m_techniques(techniques), m_access(access), m_visit(visit), m_request(request), m_advice(advice)
    {
    }

    SessionPlan make()
    {
        bar();
        choose();
        m_orders = ordersOf(m_regions, m_candidates, m_request.preferences, m_request.wish.ordered);
        m_out.reserved = reserved();
        const plan::Problem problem = problemOf();
        plan::Solution solution = plan::solve(problem);
        if (!solution.isPossible) {
            plan::Problem without = problem;
            without.pinned.clear();
            solution = plan::solve(without);
            m_out.told.push_back(pinnedDoNotFitInWords());
        }
        take(solution);
        return std::move(m_out);
    }

private:
    const Structure &structureOf(const Place &place) const { return m_regions.atlas().at(place.structure); }

    void bar()
    {
        m_barred = m_request.wish.barred;
        for (const CautionVerdict &v : m_advice.general)
            if (v.verdict == Verdict::Stop && std::find(v.actions.begin(), v.actions.end(), faceDown) != v.actions.end()) {
                m_barred.insert(Position::Prone);
                m_out.told.push_back(v.reason);
            }
        if (const CautionVerdict *lock = lockAmong(m_advice.general))
            m_out.told.push_back(lock->reason);
    }

    int reserved() const
    {
        const ReservedTimes &times = m_techniques.times.reserved;
        return m_request.lying ? times.retest + times.rising : times.sum();
    }

    void leave(const Place &place, std::string why) { m_out.left.push_back({place, std::move(why)}); }

    void choose()
    {
        for (const Suggestion &s : m_advice.treatment.leave)
            leave(s.place, s.why);
        if (m_advice.isLocked())
            return;
        const TechniqueLimits limits{m_request.preferences.techniques, m_request.wish.refused, m_request.earlier};
        for (const Suggestion &s : m_advice.treatment.treat) {
            if (m_request.wish.dropped.contains(s.place)) {
                leave(s.place, droppedInWords());
                continue;
            }
            std::vector<Finding> here;
            for (const Finding &f : m_visit.findings)
                if (f.place == s.place && f.isFound())
                    here.push_back(f);
            const auto wanted = m_request.wish.byHand.find(s.place);
            TechniqueChoice choice = chooseTechnique(m_techniques, structureOf(s.place), s, here, limits,
                wanted == m_request.wish.byHand.end() ? std::nullopt : std::optional(wanted->second));
            if (!choice.technique) {
                leave(s.place, choice.why);
                continue;
            }
            if (positionsOf(s.place) == 0) {
                leave(s.place, notReachedInWords());
                continue;
            }
            m_candidates.push_back(
                {s, choice.technique, std::move(choice.why), std::move(choice.cautions), choice.technique->dose.seconds});
        }
    }

    plan::PositionSet positionsOf(const Place &place) const
    {
        plan::PositionSet open = m_access.positionsOf(place);
        for (const Position p : m_barred)
            open &= static_cast<plan::PositionSet>(~setOf(p));
        return open;
    }

    // Covers of the two sides are two.
    int keyOf(int cover, Side side) const
    {
        if (cover == 0)
            return 0;
        const bool isBySide = m_access.covers()[static_cast<std::size_t>(cover - 1)].isBySide;
        return cover * 3 + (isBySide ? static_cast<int>(side) : 2);
    }

    plan::Problem problemOf() const
    {
        plan::Problem out;
        for (const PlanCandidate &c : m_candidates) {
            const Place &at = c.suggestion.place;
            plan::ProblemPlace place;
            place.value = std::max(1, static_cast<int>(std::lround(valueScale * c.suggestion.score)));
            place.seconds = c.seconds;
            place.positions = positionsOf(at);
            place.skin = c.technique->skin;
            if (!c.technique->throughCloth)
                for (const auto &[position, word] : positionWords)
                    place.cover[static_cast<std::size_t>(position)] = keyOf(m_access.coverOf(at, position), at.side);
            place.deepArea = c.technique->deep ? keyOf(m_access.areaOf(at), at.side) : 0;
            if (m_request.wish.pinned.contains(at))
                out.pinned.push_back(out.places.size());
            out.places.push_back(place);
        }
        for (const OrderedPair &pair : m_orders)
            out.before.emplace_back(pair.first, pair.second);
        out.seconds =
            std::clamp(m_request.wish.minutes.value_or(PlanWish::usualMinutes) * 60 - m_out.reserved, 0, plan::mostSeconds);
        out.times = m_techniques.times.between;
        if (m_request.lying)
            out.start.position = static_cast<std::size_t>(*m_request.lying);
        out.start.oiled = m_request.isOiled;
        return out;
    }

    void take(const plan::Solution &solution)
    {
        m_out.seconds = solution.seconds;
        m_out.value = solution.value;
        m_out.turns = solution.turns;
        m_out.bound = solution.bound;
        std::vector<bool> isIn(m_candidates.size(), false);
        for (const plan::ProblemStep &step : solution.steps)
            isIn[step.place] = true;
        for (const plan::ProblemStep &step : solution.steps)
            m_out.steps.push_back(stepOf(step, isIn));
        for (std::size_t i = 0; i < m_candidates.size(); ++i)
            if (!isIn[i])
                leave(m_candidates[i].suggestion.place, noTimeInWords());
    }

    PlannedStep stepOf(const plan::ProblemStep &from, const std::vector<bool> &isIn) const
    {
        const PlanCandidate &c = m_candidates[from.place];
        PlannedStep out;
        out.place = c.suggestion.place;
        out.technique = c.technique;
        out.position = static_cast<Position>(from.position);
        if (const int cover = c.technique->throughCloth ? 0 : m_access.coverOf(out.place, out.position); cover > 0)
            out.cover = m_access.covers()[static_cast<std::size_t>(cover - 1)];
        out.turn = from.turn;
        out.wipe = from.wipe;
        out.uncover = from.uncover;
        out.rest = from.rest;
        out.work = c.seconds;
        out.value = std::max(1, static_cast<int>(std::lround(valueScale * c.suggestion.score)));
        out.cautions = c.cautions;
        out.why = {c.suggestion.why, c.why};
        for (const OrderedPair &pair : m_orders)
            if (pair.first == from.place && isIn[pair.second] && pair.reason != OrderReason::ComplaintFirst)
                out.before.emplace_back(pair.reason, m_candidates[pair.second].suggestion.place);
        return out;
    }

    const Regions &m_regions;
    const Techniques &m_techniques;
    const Access &m_access;
    const Visit &m_visit;
    const PlanRequest &m_request;
    const Advice &m_advice;
    std::set<Position> m_barred;
    std::vector<PlanCandidate> m_candidates;
    std::vector<OrderedPair> m_orders;
    SessionPlan m_out;
};

} // namespace

Result<SessionPlan> Planner::plan(const Visit &visit, const PlanRequest &request, const std::string &file) const
{
    const Canonical c = canonical(visit);
    const PlanRequest there = mirrored(request);
    const bool isMirrored = c.isItsOwnImage ? sidesOf(there) < sidesOf(request) : c.isMirrored;
    const Visit canonicalVisit = isMirrored == c.isMirrored ? c.visit : mirrored(c.visit);
    const PlanRequest &canonicalRequest = isMirrored ? there : request;
    const auto advice = m_adviser.advise(canonicalVisit, file, request.preferences);
    if (!advice)
        return advice.error();
    SessionPlan out = Draft(m_regions, m_techniques, m_access, canonicalVisit, canonicalRequest, advice.value()).make();
    if (isMirrored)
        out = mirrored(std::move(out));
    for (PlannedStep &step : out.steps) // once the sides are the patient's
        for (const auto &[reason, place] : step.before)
            step.why.push_back(beforeInWords(reason, m_regions.atlas().spoken(place)));
    return out;
}

PlanRequest mirrored(PlanRequest request)
{
    request.wish = mirrored(request.wish);
    for (EarlierWork &work : request.earlier)
        work.place = mirrored(work.place);
    if (request.lying)
        request.lying = mirrored(*request.lying);
    return request;
}

SessionPlan mirrored(SessionPlan plan)
{
    for (PlannedStep &step : plan.steps) {
        step.place = mirrored(step.place);
        step.position = mirrored(step.position);
        for (auto &[reason, place] : step.before)
            place = mirrored(place);
        for (CautionVerdict &v : step.cautions)
            if (v.place)
                v.place = mirrored(*v.place);
    }
    for (LeftOut &left : plan.left)
        left.place = mirrored(left.place);
    return plan;
}

} // namespace raphe
