// The reasoning over the whole atlas, and how it grows: the walk beside PRPACK of igraph on the same graph (both with
// factorisation; the prefactored solve and the ordering too), the tables, and a full answer with 40 findings.
#include "core/plan/Advice.h"
#include "tests/benchmarks/Knowledge.h"
#include "tests/benchmarks/Percentiles.h"

#include <igraph/igraph.h>

#include <map>
#include <random>
#include <set>

namespace {

using namespace raphe;

const Adviser &adviser()
{
    static const auto made = Adviser::of(knowledge());
    return made.value();
}

double restart()
{
    return (*knowledge().constants)["restart"];
}

/// The atlas's graph this many times over, each copy tied to the next at every hundredth place.
const WeightedGraph &graph(std::int64_t copies)
{
    static std::map<std::int64_t, WeightedGraph> made;
    const auto it = made.find(copies);
    if (it != made.end())
        return it->second;
    const WeightedGraph &one = knowledge().linkage->graph();
    std::vector<WeightedLink> links;
    for (std::size_t copy = 0; copy < static_cast<std::size_t>(copies); ++copy) {
        const std::size_t first = copy * one.size();
        for (const WeightedLink &link : one.links())
            links.push_back({first + link.a, first + link.b, link.weight});
        for (std::size_t node = 0; copy > 0 && node < one.size(); node += 100)
            for (const std::size_t tied : std::set{node, knowledge().linkage->mirror()[node]})
                links.push_back({first + tied, first - one.size() + tied, 0.4});
    }
    return made.emplace(copies, WeightedGraph(one.size() * static_cast<std::size_t>(copies), std::move(links))).first->second;
}

std::vector<std::size_t> mirrorOf(const WeightedGraph &g)
{
    const std::vector<std::size_t> &one = knowledge().linkage->mirror();
    std::vector<std::size_t> mirror(g.size());
    for (std::size_t node = 0; node < g.size(); ++node)
        mirror[node] = node / one.size() * one.size() + one[node % one.size()];
    return mirror;
}

std::vector<double> startOn(const WeightedGraph &g)
{
    std::mt19937 random(1); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same start every time
    std::vector<double> start(g.size(), 0.0);
    for (int i = 0; i < 40; ++i)
        start[random() % g.size()] = 1;
    return start;
}

void size(benchmark::State &state, const WeightedGraph &g)
{
    state.counters["places"] = static_cast<double>(g.size());
    state.counters["links"] = static_cast<double>(g.links().size());
}

// Finds the order of elimination too. The walk from everywhere, needed once for the lift, is part of it.
void walkWithOrdering(benchmark::State &state)
{
    const WeightedGraph &g = graph(state.range(0));
    const auto start = startOn(g);
    const auto mirror = mirrorOf(g);
    for (auto _ : state) {
        const WalkSolver solver(g, restart(), mirror);
        benchmark::DoNotOptimize(solver.walk(start));
    }
    size(state, g);
}
BENCHMARK(walkWithOrdering)->Arg(1)->Arg(10)->Unit(benchmark::kMillisecond);

// The order of elimination depends on which links there are; new weights on them need the factorisation alone.
void walkWithFactorisation(benchmark::State &state)
{
    const WeightedGraph &g = graph(state.range(0));
    const auto start = startOn(g);
    WalkSolver solver(g, restart(), mirrorOf(g));
    for (auto _ : state) {
        solver.reweigh(g);
        benchmark::DoNotOptimize(solver.walk(start));
    }
    size(state, g);
}
BENCHMARK(walkWithFactorisation)->Arg(1)->Arg(10)->Unit(benchmark::kMillisecond);

void walkPrefactored(benchmark::State &state)
{
    const WeightedGraph &g = graph(state.range(0));
    const auto start = startOn(g);
    const WalkSolver solver(g, restart(), mirrorOf(g));
    for (auto _ : state)
        benchmark::DoNotOptimize(solver.walk(start));
    size(state, g);
}
BENCHMARK(walkPrefactored)->Arg(1)->Arg(10)->Unit(benchmark::kMillisecond);

// The reference: PRPACK, on a graph that is in igraph's form already.
void walkByPrpack(benchmark::State &state)
{
    const WeightedGraph &g = graph(state.range(0));
    const auto start = startOn(g);
    igraph_vector_int_t edges;
    igraph_vector_int_init(&edges, static_cast<igraph_integer_t>(2 * g.links().size()));
    igraph_vector_t weights;
    igraph_vector_init(&weights, static_cast<igraph_integer_t>(g.links().size()));
    for (std::size_t i = 0; i < g.links().size(); ++i) {
        VECTOR(edges)[2 * i] = static_cast<igraph_integer_t>(g.links()[i].a);
        VECTOR(edges)[2 * i + 1] = static_cast<igraph_integer_t>(g.links()[i].b);
        VECTOR(weights)[i] = g.links()[i].weight;
    }
    igraph_t theirs;
    igraph_create(&theirs, &edges, static_cast<igraph_integer_t>(g.size()), IGRAPH_UNDIRECTED);
    igraph_vector_t reset;
    igraph_vector_init(&reset, static_cast<igraph_integer_t>(g.size()));
    for (std::size_t i = 0; i < start.size(); ++i)
        VECTOR(reset)[i] = start[i];
    igraph_vector_t result;
    igraph_vector_init(&result, 0);
    for (auto _ : state)
        igraph_personalized_pagerank(&theirs, IGRAPH_PAGERANK_ALGO_PRPACK, &result, nullptr, igraph_vss_all(), IGRAPH_UNDIRECTED,
            1 - restart(), &reset, &weights, nullptr);
    igraph_vector_destroy(&result);
    igraph_vector_destroy(&reset);
    igraph_destroy(&theirs);
    igraph_vector_destroy(&weights);
    igraph_vector_int_destroy(&edges);
    size(state, g);
}
BENCHMARK(walkByPrpack)->Arg(1)->Arg(10)->Unit(benchmark::kMillisecond);

// All that depends on the atlas alone: factor, reach of every source, entropies of every check.
void tables(benchmark::State &state)
{
    const Knowledge &k = knowledge();
    for (auto _ : state) {
        const Reasoner reasoner(*k.linkage, *k.regions, *k.constants);
        state.counters["MB"] = static_cast<double>(reasoner.bytes()) / 1e6;
    }
}
BENCHMARK(tables)->Unit(benchmark::kMillisecond);

// The same on larger graphs: about every fourth place a source and a check.
void tablesOfGraph(benchmark::State &state)
{
    const WeightedGraph &g = graph(state.range(0));
    const auto mirror = mirrorOf(g);
    std::vector<std::size_t> sources;
    for (std::size_t i = 0; i < g.size(); ++i)
        if (std::min(i, mirror[i]) % 4 == 0)
            sources.push_back(i);
    const Constants &constants = *knowledge().constants;
    const Detection touch{constants["detect-tenderness"], constants["leak-tenderness-2"]};
    for (auto _ : state) {
        const WalkSolver solver(g, restart(), mirror);
        const ReachTable reach(solver, g.size(), sources, mirror);
        const CheckTable check(reach, sources, touch);
        state.counters["MB"] = static_cast<double>(reach.bytes() + check.bytes()) / 1e6;
    }
    size(state, g);
}
BENCHMARK(tablesOfGraph)->Arg(1)->Arg(3)->Arg(10)->Unit(benchmark::kMillisecond)->Iterations(1);

Visit visitOf40()
{
    const Knowledge &k = knowledge();
    std::mt19937 random(7); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same visit every time
    Visit visit;
    visit.complaintAt = {{{"gluteal-region-middle"}, Side::Right}};
    while (visit.findings.size() < 40) {
        Finding f;
        f.place = k.linkage->places()[random() % k.linkage->places().size()];
        const Kind kind = k.atlas->at(f.place.structure).kind;
        if (kind != Kind::Muscle && kind != Kind::Joint && kind != Kind::Fascia && kind != Kind::Ligament)
            continue;
        if (visit.findings.size() % 3 == 2)
            f.clear = {true, true};
        else
            f.tenderness = Tenderness{1 + static_cast<int>(random() % 3)};
        f.familiar = random() % 4 == 0 && !f.clear.any();
        visit.findings.push_back(std::move(f));
    }
    return visit;
}

// Spread, explain, check and treat with five paths a list, 40 findings, the tables there.
void fullAnswer(benchmark::State &state)
{
    const Reasoner &reasoner = adviser().reasoner();
    const Visit visit = visitOf40();
    Percentiles times;
    for (auto _ : state)
        times.time([&] {
            benchmark::DoNotOptimize(reasoner.reasons(visit));
            benchmark::DoNotOptimize(treatFirst(reasoner, visit));
        });
    times.report(state, "ms", 1e3);
}
BENCHMARK(fullAnswer)->Unit(benchmark::kMillisecond);

// The same with the caution rules respected, as the window shows it after each finding.
void fullAnswerWithCautions(benchmark::State &state)
{
    Visit visit = visitOf40();
    visit.conditions = {{"anticoagulant", {}}, {"open-wound", {{{"heel-region"}, Side::Left}}}};
    Percentiles times;
    for (auto _ : state)
        times.time([&] { benchmark::DoNotOptimize(adviser().advise(visit, "visit")); });
    times.report(state, "ms", 1e3);
}
BENCHMARK(fullAnswerWithCautions)->Unit(benchmark::kMillisecond);

void threeWaysToAPlace(benchmark::State &state)
{
    const Visit visit = visitOf40();
    for (auto _ : state)
        benchmark::DoNotOptimize(adviser().reasoner().ways(visit, {{"tibialis-anterior"}, Side::Left}));
}
BENCHMARK(threeWaysToAPlace)->Unit(benchmark::kMillisecond);

} // namespace
