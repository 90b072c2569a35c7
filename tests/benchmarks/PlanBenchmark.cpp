// The session plan by the program's own search, beside GLPK's integer programme: values alike, times apart.
#include "core/plan/Solve.h"
#include "tests/core/plan/PlanProgramme.h"
#include "tests/core/plan/RandomPlans.h"

#include <benchmark/benchmark.h>

#include <vector>

namespace raphe::plan {

namespace {

constexpr int plenty = 3000; // seconds: most places fit, which leaves most plans to search
constexpr int scarce = 1200;

std::vector<Problem> problems(std::size_t places, int seconds)
{
    test::RandomPlans plans(7);
    std::vector<Problem> out;
    for (int i = 0; i < 5; ++i)
        out.push_back(plans.plan(places, seconds));
    return out;
}

void planSearched(benchmark::State &state)
{
    const auto all = problems(static_cast<std::size_t>(state.range(0)), static_cast<int>(state.range(1)));
    std::size_t i = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(solve(all[i++ % all.size()]));
}
BENCHMARK(planSearched)->ArgsProduct({{8, 10, 12, 14, 16}, {scarce, plenty}})->Unit(benchmark::kMillisecond);

void planByGlpk(benchmark::State &state)
{
    constexpr int cap = 30'000; // ms
    const auto all = problems(static_cast<std::size_t>(state.range(0)), static_cast<int>(state.range(1)));
    std::size_t i = 0;
    int proved = 0;
    for (auto _ : state)
        proved += test::PlanProgramme(all[i++ % all.size()]).solve(cap).isProved ? 1 : 0;
    state.counters["proved"] = benchmark::Counter(proved, benchmark::Counter::kAvgIterations);
}
BENCHMARK(planByGlpk)->ArgsProduct({{8, 10, 12}, {scarce, plenty}})->Iterations(5)->Unit(benchmark::kMillisecond);

} // namespace

} // namespace raphe::plan
