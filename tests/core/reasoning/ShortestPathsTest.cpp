// Shortest ways against all ways without a loop, on random small graphs.
#include "tests/core/reasoning/RandomGraphs.h"

#include "core/reasoning/ShortestPaths.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace raphe::test {

namespace {

// Lengths of all loopless ways, shortest first; of parallel links only the shortest counts.
std::vector<double> allLengths(const WeightedGraph &graph, std::size_t from, std::size_t to)
{
    std::map<std::vector<std::size_t>, double> ways; // by the nodes passed
    std::vector<std::size_t> nodes{from};
    const auto walkOn = [&](const auto &self, double length) -> void {
        if (nodes.back() == to) {
            const auto it = ways.try_emplace(nodes, length).first;
            it->second = std::min(it->second, length);
            return;
        }
        for (std::size_t index = 0; index < graph.links().size(); ++index) {
            const WeightedLink &link = graph.links()[index];
            if (link.a != nodes.back() && link.b != nodes.back())
                continue;
            const std::size_t next = link.other(nodes.back());
            if (std::find(nodes.begin(), nodes.end(), next) != nodes.end())
                continue;
            nodes.push_back(next);
            self(self, length + 1 / link.weight);
            nodes.pop_back();
        }
    };
    walkOn(walkOn, 0);
    std::vector<double> lengths;
    for (const auto &[passed, length] : ways)
        lengths.push_back(length);
    std::sort(lengths.begin(), lengths.end());
    return lengths;
}

TEST(ShortestPaths, AreTheShortestOfAllWays)
{
    RandomGraphs random(7);
    for (int i = 0; i < 200; ++i) {
        const WeightedGraph graph = random.next();
        const std::size_t from = random.below(graph.size());
        const std::size_t to = (from + 1 + random.below(graph.size() - 1)) % graph.size();
        const auto wanted = allLengths(graph, from, to);
        const auto ways = shortestWays(graph, from, to, 3);
        ASSERT_EQ(ways.size(), std::min<std::size_t>(3, wanted.size())) << "graph " << i;
        for (std::size_t k = 0; k < ways.size(); ++k) {
            EXPECT_NEAR(ways[k].length, wanted[k], 1e-12) << "graph " << i << ", way " << k;
            std::size_t node = ways[k].start;
            std::set<std::size_t> passed{node};
            for (const std::size_t link : ways[k].links) {
                node = graph.links()[link].other(node);
                EXPECT_TRUE(passed.insert(node).second) << "a loop in graph " << i;
            }
            EXPECT_EQ(ways[k].start, from);
            EXPECT_EQ(node, to);
        }
        if (!wanted.empty()) {
            EXPECT_NEAR(PathTree(graph, {from}, {to}).to(to).length, wanted.front(), 1e-12);
            EXPECT_NEAR(nearest(graph, from, {to}).length, wanted.front(), 1e-12);
        } else {
            EXPECT_TRUE(nearest(graph, from, {to}).links.empty());
        }
    }
}

TEST(ShortestPaths, TheNearestIsNeverTheStartItself)
{
    const WeightedGraph line(4, {{0, 1, 1.0}, {1, 2, 0.5}, {2, 3, 1.0}});
    const Way way = nearest(line, 1, {1, 3, 0});
    EXPECT_EQ(way.links, std::vector<std::size_t>{0});
    EXPECT_EQ(way.length, 1);
}

} // namespace

} // namespace raphe::test
