// Shortest paths on a weighted graph, length of a link 1 / weight: from several starts to everywhere, to the nearest of
// several ends, and the k shortest without a loop between two places. Between paths of the same length the choice is fixed
// by the order of the nodes. No state; thread-safe.
#pragma once

#include "core/reasoning/Graph.h"

#include <set>

namespace raphe {

/// A way: the links in order, from its start.
struct Way {
    std::size_t start = 0;
    std::vector<std::size_t> links; // indices into graph.links()
    double length = 0;
};

/// Shortest ways from a set of start nodes.
class PathTree {
public:
    /// `ends`: the nodes whose ways will be asked for, each at most once.
    PathTree(const WeightedGraph &graph, const std::vector<std::size_t> &starts, const std::set<std::size_t> &ends);
    /// From the nearest start to one of the ends; without links for a start or an unreachable node.
    [[nodiscard]] Way to(std::size_t node) const;

private:
    const WeightedGraph *m_graph;
    std::vector<double> m_length;
    std::vector<std::size_t> m_via; // link by which the node was reached
};

/// The shortest way from a node to the nearest of `ends` other than itself; without links when none can be reached.
[[nodiscard]] Way nearest(const WeightedGraph &graph, std::size_t from, const std::vector<std::size_t> &ends);

/// The k shortest loopless ways, shortest first; of parallel links only the shortest counts. Fewer when there are no more.
/// Yen 1971 (Management Science 17:712-716), from memory.
[[nodiscard]] std::vector<Way> shortestWays(const WeightedGraph &graph, std::size_t from, std::size_t to, std::size_t k);

} // namespace raphe
