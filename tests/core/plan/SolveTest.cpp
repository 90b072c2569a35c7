// The best plan against trying every order, and the rules that every plan must keep.
#include "core/plan/Solve.h"
#include "tests/core/plan/RandomPlans.h"
#include "tests/support/Cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <tuple>

namespace raphe::plan {

namespace {

using Order = std::vector<std::pair<std::size_t, std::size_t>>;

// Whether the second place of a pair stands before the first.
bool isAgainst(const Problem &problem, const Order &order)
{
    const auto at = [&](std::size_t place) {
        return std::find_if(order.begin(), order.end(), [&](const auto &step) { return step.first == place; });
    };
    return std::any_of(problem.before.begin(), problem.before.end(), [&](const auto &pair) {
        return at(pair.first) != order.end() && at(pair.second) != order.end() && at(pair.second) < at(pair.first);
    });
}

bool hasPinned(const Problem &problem, const Order &order)
{
    return std::all_of(problem.pinned.begin(), problem.pinned.end(), [&](std::size_t place) {
        return std::any_of(order.begin(), order.end(), [&](const auto &step) { return step.first == place; });
    });
}

auto rank(const Solution &s)
{
    return std::tuple(-s.value, s.turns, s.seconds);
}

// Every order of every choice of places in every position; cut only where time or turns have run out.
class Trying {
public:
    explicit Trying(const Problem &problem) : m_problem(problem) { }

    Solution best()
    {
        goOn();
        return m_best;
    }

private:
    void goOn()
    {
        const Solution now = priced(m_problem, m_order);
        if (now.seconds > m_problem.seconds || now.turns > m_problem.turnsAtMost || isAgainst(m_problem, m_order))
            return;
        if (hasPinned(m_problem, m_order) && (!m_best.isPossible || rank(now) < rank(m_best)))
            m_best = now;
        for (std::size_t i = 0; i < m_problem.places.size(); ++i) {
            if (std::any_of(m_order.begin(), m_order.end(), [&](const auto &step) { return step.first == i; }))
                continue;
            for (std::size_t p = 0; p < positionCount; ++p)
                if (((m_problem.places[i].positions >> p) & 1U) != 0) {
                    m_order.emplace_back(i, p);
                    goOn();
                    m_order.pop_back();
                }
        }
    }

    const Problem &m_problem;
    Order m_order;
    Solution m_best;
};

Order orderOf(const Solution &solution)
{
    Order out;
    for (const ProblemStep &step : solution.steps)
        out.emplace_back(step.place, step.position);
    return out;
}

// The times of `priced` are checked by hand below; here every rule is looked at by itself.
void expectAllRules(const Problem &problem, const Solution &solution, const std::string &which)
{
    const Order order = orderOf(solution);
    std::set<std::size_t> worked;
    for (const auto &[place, position] : order) {
        EXPECT_TRUE(worked.insert(place).second) << which << ": a place twice";
        EXPECT_NE((problem.places[place].positions >> position) & 1U, 0U) << which << ": a position that is not allowed";
    }
    EXPECT_FALSE(isAgainst(problem, order)) << which << ": an order is broken";
    EXPECT_TRUE(hasPinned(problem, order)) << which << ": a pinned place is missing";
    const Solution sum = priced(problem, order);
    EXPECT_EQ(sum.steps, solution.steps) << which;
    EXPECT_EQ(sum.seconds, solution.seconds) << which;
    EXPECT_EQ(sum.value, solution.value) << which;
    EXPECT_EQ(sum.turns, solution.turns) << which;
    EXPECT_LE(sum.seconds, problem.seconds) << which << ": too long";
    EXPECT_LE(sum.turns, problem.turnsAtMost) << which << ": too many turns";
    EXPECT_GE(solution.bound, solution.value) << which;
}

TEST(Solve, IsAsGoodAsTryingEverything)
{
    test::RandomPlans plans(1);
    constexpr int cases = 300;
    for (int i = 0; i < cases; ++i) {
        const Problem problem = plans.plan(static_cast<std::size_t>(plans.any(0, i % 10 == 0 ? 8 : 6)));
        const Solution tried = Trying(problem).best();
        const Solution solved = solve(problem);
        ASSERT_EQ(solved.isPossible, tried.isPossible) << i;
        if (solved.isPossible) {
            ASSERT_EQ(rank(solved), rank(tried)) << i;
        }
    }
}

TEST(Solve, EveryPlanKeepsAllRules)
{
    test::RandomPlans plans(2);
    const int cases = 5 * raphe::test::casesWanted(); // 10,000 with --long
    for (int i = 0; i < cases; ++i) {
        const Problem problem = plans.plan(static_cast<std::size_t>(plans.any(0, i % 20 == 0 ? 20 : 9)));
        if (const Solution solution = solve(problem); solution.isPossible)
            expectAllRules(problem, solution, "plan " + std::to_string(i));
    }
}

// Two places in one area, worked out by hand: 45 s to turn over, 60 s of wiping before dry work, 15 s to uncover, 60 s of rest.
TEST(Solve, TimesBetweenStepsAreAddedUp)
{
    Problem problem;
    problem.seconds = 2000;
    problem.times.wipe = 60;
    problem.times.uncover = 15;
    problem.times.rest = 60;
    problem.times.turn[0][1] = problem.times.turn[1][0] = 45;
    ProblemPlace oiled;
    oiled.value = 10;
    oiled.seconds = 100;
    oiled.positions = 1;
    oiled.skin = Skin::Oiled;
    oiled.cover.fill(1);
    oiled.deepArea = 1;
    ProblemPlace dry = oiled;
    dry.positions = 2;
    dry.skin = Skin::Dry;
    dry.cover.fill(2);
    problem.places = {oiled, dry};
    EXPECT_EQ(solve(problem).seconds, 15 + 100 + 45 + 15 + 60 + 100) << "dry first: nothing to wipe";
    problem.before = {{0, 1}};
    EXPECT_EQ(solve(problem).seconds, 15 + 100 + 45 + 60 + 15 + 60 + 100) << "oil first: wiped";
    problem.turnsAtMost = 0;
    EXPECT_EQ(solve(problem).steps.size(), 1U);
}

TEST(Solve, MorePlacesThanCanBeSearchedHaveABound)
{
    test::RandomPlans plans(3);
    for (int i = 0; i < 5; ++i) {
        Problem problem = plans.plan(24, 1500);
        problem.pinned.clear();
        const Solution solution = solve(problem);
        ASSERT_TRUE(solution.isPossible);
        expectAllRules(problem, solution, "of 24 places");
        Problem some = problem; // no plan of fewer places is worth more than the bound of all
        some.places.resize(exactAtMost);
        std::erase_if(some.before, [](const auto &pair) { return pair.first >= exactAtMost || pair.second >= exactAtMost; });
        EXPECT_LE(solve(some).value, solution.bound);
    }
}

TEST(Solve, WhatIsPinnedAndDoesNotFitIsNoPlan)
{
    Problem problem;
    problem.seconds = 100;
    ProblemPlace place;
    place.seconds = 200;
    place.positions = 1;
    problem.places = {place};
    problem.pinned = {0};
    EXPECT_FALSE(solve(problem).isPossible);
    problem.seconds = 200;
    EXPECT_TRUE(solve(problem).isPossible);
    problem.places[0].positions = 0;
    EXPECT_FALSE(solve(problem).isPossible) << "cannot be reached";
}

} // namespace

} // namespace raphe::plan
