// The caution rules over the whole atlas: one visit's cautions made, and all of its places asked, first and again.
#include "core/safety/Cautions.h"

#include "tests/benchmarks/Knowledge.h"

#include <benchmark/benchmark.h>

namespace {

using namespace raphe;

const SafetyRules &rules()
{
    static const auto read = readEmbeddedSafetyRules(*knowledge().atlas);
    return read.value();
}

const Regions &regions()
{
    static const auto read = readEmbeddedRegions(*knowledge().atlas, *knowledge().body);
    return read.value();
}

Visit visitWithConditions()
{
    Visit visit;
    visit.conditions = {{"anticoagulant", {}}, {"open-wound", {{{"heel-region"}, Side::Left}}},
        {"suspected-fracture", {{{"fibula"}, Side::Right}}}, {"irritable-joint", {{{"l4-l5"}, Side::Midline}}},
        {"lymphoedema", {{{"axillary-region"}, Side::Left}}}};
    return visit;
}

void makeCautions(benchmark::State &state)
{
    const Visit visit = visitWithConditions();
    for (auto _ : state)
        benchmark::DoNotOptimize(Cautions::of(rules(), regions(), visit, "visit"));
}
BENCHMARK(makeCautions)->Unit(benchmark::kMicrosecond);

/// Asks at every place of the atlas, and counts the seconds of one place.
template <class Ask> void askEverywhere(benchmark::State &state, const Regions &shared, Ask ask)
{
    const auto cautions = Cautions::of(rules(), shared, visitWithConditions(), "visit");
    const auto &places = knowledge().linkage->places();
    for (auto _ : state)
        for (const Place &place : places)
            benchmark::DoNotOptimize(ask(cautions.value(), place));
    state.counters["seconds_a_place"] = benchmark::Counter(
        static_cast<double>(places.size()), benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

// All geometry is found out on the way.
void verdictsAtFirst(benchmark::State &state)
{
    const auto fresh = readEmbeddedRegions(*knowledge().atlas, *knowledge().body);
    askEverywhere(state, fresh.value(), [](const Cautions &c, const Place &place) { return c.at(place); });
}
BENCHMARK(verdictsAtFirst)->Unit(benchmark::kMillisecond)->Iterations(1);

void verdictsAgain(benchmark::State &state)
{
    askEverywhere(state, regions(), [](const Cautions &c, const Place &place) { return c.at(place); });
}
BENCHMARK(verdictsAgain)->Unit(benchmark::kMillisecond)->MinWarmUpTime(0.5);

void barredAgain(benchmark::State &state)
{
    askEverywhere(state, regions(), [](const Cautions &c, const Place &place) { return c.isBarred(place); });
}
BENCHMARK(barredAgain)->Unit(benchmark::kMillisecond)->MinWarmUpTime(0.5);

} // namespace
