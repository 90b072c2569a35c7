// The walk on the real atlas against personalised PageRank of igraph (PRPACK), a reference library: for visits without a
// clear place both are the same quantity.
#include "tests/core/reasoning/Visits.h"

#include <gtest/gtest.h>

#include <igraph/igraph.h>

#include <cmath>
#include <numeric>

namespace raphe::test {

namespace {

std::vector<double> pagerank(const WeightedGraph &graph, const std::vector<double> &start, double restart)
{
    const auto n = static_cast<igraph_integer_t>(graph.size());
    igraph_vector_int_t edges;
    igraph_vector_int_init(&edges, static_cast<igraph_integer_t>(2 * graph.links().size()));
    igraph_vector_t weights;
    igraph_vector_init(&weights, static_cast<igraph_integer_t>(graph.links().size()));
    for (std::size_t i = 0; i < graph.links().size(); ++i) {
        const WeightedLink &link = graph.links()[i];
        VECTOR(edges)[2 * i] = static_cast<igraph_integer_t>(link.a);
        VECTOR(edges)[2 * i + 1] = static_cast<igraph_integer_t>(link.b);
        VECTOR(weights)[i] = link.weight;
    }
    igraph_t g;
    igraph_create(&g, &edges, n, IGRAPH_UNDIRECTED);
    igraph_vector_t reset;
    igraph_vector_init(&reset, n);
    for (std::size_t i = 0; i < start.size(); ++i)
        VECTOR(reset)[i] = start[i];
    igraph_vector_t result;
    igraph_vector_init(&result, 0);
    igraph_personalized_pagerank(&g, IGRAPH_PAGERANK_ALGO_PRPACK, &result, nullptr, igraph_vss_all(), IGRAPH_UNDIRECTED,
        1 - restart, &reset, &weights, nullptr);
    std::vector<double> out(start.size());
    for (std::size_t i = 0; i < out.size(); ++i)
        out[i] = VECTOR(result)[i];
    igraph_vector_destroy(&result);
    igraph_vector_destroy(&reset);
    igraph_destroy(&g);
    igraph_vector_destroy(&weights);
    igraph_vector_int_destroy(&edges);
    return out;
}

// Findings only, at places that have links: from one without links igraph's walk starts anew, ours ends.
std::vector<Finding> withoutClears(const Visit &visit)
{
    std::vector<Finding> out;
    for (const Finding &f : visit.findings) {
        const auto nodes = linkage().nodesOf(f.place);
        if (f.isFound() && std::all_of(nodes.begin(), nodes.end(), [](auto node) { return linkage().graph().degree(node) > 0; }))
            out.push_back(f);
    }
    return out;
}

TEST(Igraph, GivesTheSameWalkAndTheSameRanks)
{
    const double restart = constants()["restart"];
    const WalkSolver solver(linkage().graph(), restart, linkage().mirror());
    RandomVisits random(2026);
    int compared = 0;
    for (int i = 0; i < 40; ++i) {
        const auto start = startOf(linkage(), withoutClears(random.next()), constants());
        if (std::accumulate(start.begin(), start.end(), 0.0) <= 0)
            continue;
        const auto ours = solver.walk(start);
        const auto theirs = pagerank(linkage().graph(), start, restart);
        for (std::size_t node = 0; node < ours.size(); ++node)
            ASSERT_NEAR(ours[node], theirs[node], 1e-8) << "visit " << i << ", " << linkage().places()[node] << "; igraph PRPACK";
        std::vector<std::size_t> order(ours.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return ours[a] > ours[b]; });
        // Where ours differ by more than 2e-8, theirs stand in the same order.
        double leastAbove = 2; // of theirs, among nodes that stand clearly above the present one
        std::size_t next = 0;
        for (const std::size_t node : order) {
            for (; ours[order[next]] > ours[node] + 2e-8; ++next)
                leastAbove = std::min(leastAbove, theirs[order[next]]);
            ASSERT_GT(leastAbove, theirs[node]) << "visit " << i << ", " << linkage().places()[node];
        }
        ++compared;
    }
    EXPECT_GT(compared, 20);
}

} // namespace

} // namespace raphe::test
