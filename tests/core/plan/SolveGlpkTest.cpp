// The best plan against GLPK's integer programme (GNU Linear Programming Kit 5.0).
#include "core/plan/Solve.h"
#include "tests/core/plan/PlanProgramme.h"
#include "tests/core/plan/RandomPlans.h"
#include "tests/support/Cases.h"

#include <gtest/gtest.h>

#include <iostream>
#include <tuple>

namespace raphe::plan {

namespace {

TEST(SolveGlpk, FindsNoBetterPlanOfUpToEightPlaces)
{
    constexpr int cap = 60'000; // ms
    test::RandomPlans plans(4);
    for (int i = 0; i < 40; ++i) {
        const Problem problem = plans.plan(static_cast<std::size_t>(plans.any(1, 8)));
        const auto reference = test::PlanProgramme(problem).solve(cap);
        const Solution solution = solve(problem);
        ASSERT_TRUE(reference.isProved) << i << ": GLPK needs more time";
        ASSERT_EQ(solution.isPossible, reference.isPossible) << i;
        if (solution.isPossible) {
            ASSERT_EQ(std::tuple(solution.value, solution.turns, solution.seconds),
                std::tuple(reference.value, reference.turns, reference.seconds))
                << i;
        }
    }
}

TEST(SolveGlpk, FindsNoBetterPlanOfTenToFourteenPlaces)
{
    constexpr int cap = 30'000; // ms
    const int cases = raphe::test::casesWanted() >= 2000 ? 20 : 2; // 20 with --long
    test::RandomPlans plans(5);
    int proved = 0;
    for (int i = 0; i < cases; ++i) {
        const Problem problem = plans.plan(static_cast<std::size_t>(plans.any(10, 14)));
        const auto reference = test::PlanProgramme(problem).solve(cap);
        const Solution solution = solve(problem);
        if (!reference.isPossible)
            continue;
        ASSERT_TRUE(solution.isPossible) << i;
        EXPECT_GE(solution.value, reference.value) << i;
        if (!reference.isProved)
            continue;
        ++proved;
        EXPECT_EQ(std::tuple(solution.value, solution.turns, solution.seconds),
            std::tuple(reference.value, reference.turns, reference.seconds))
            << i;
    }
    std::cout << "GLPK proved " << proved << " of " << cases << " plans of 10 to 14 places in 30 s each\n";
}

} // namespace

} // namespace raphe::plan
