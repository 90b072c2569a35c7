// Writes the real atlas's graph, some walks and some shortest paths as JSON, for networkx_check.py to judge.
#include "tests/core/reasoning/Visits.h"

#include <nlohmann/json.hpp>

#include <iostream>

int main()
{
    using namespace raphe;
    using namespace raphe::test;
    using nlohmann::json;

    const WeightedGraph &graph = linkage().graph();
    const double restart = constants()["restart"];
    const WalkSolver solver(graph, restart, linkage().mirror());
    json out{{"nodes", graph.size()}, {"restart", restart}, {"links", json::array()}, {"walks", json::array()},
        {"paths", json::array()}};
    for (const WeightedLink &link : graph.links())
        out["links"].push_back({link.a, link.b, link.weight});

    RandomVisits random(11);
    while (out["walks"].size() < 12) {
        std::vector<double> start(graph.size(), 0.0);
        bool any = false;
        for (const Finding &f : random.next().findings)
            for (const std::size_t node : linkage().nodesOf(f.place))
                if (graph.degree(node) > 0 && f.isFound()) {
                    start[node] += strengthOf(f, constants());
                    any = true;
                }
        if (any)
            out["walks"].push_back({{"start", start}, {"walk", solver.walk(start)}});
    }
    while (out["paths"].size() < 60) {
        const auto from = static_cast<std::size_t>(random.below(static_cast<int>(graph.size())));
        const auto to = static_cast<std::size_t>(random.below(static_cast<int>(graph.size())));
        if (from == to)
            continue;
        json lengths = json::array();
        for (const Way &way : shortestWays(graph, from, to, 3))
            lengths.push_back(way.length);
        out["paths"].push_back({{"from", from}, {"to", to}, {"lengths", lengths}});
    }
    std::cout << out.dump() << '\n';
    return 0;
}
