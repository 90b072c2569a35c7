// A plain weighted graph without directions, by index: what the walk, the tables and the shortest paths work on. It knows
// no anatomy, so that each of them can be checked on any graph. Immutable, thread-safe.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace raphe {

struct WeightedLink {
    std::size_t a = 0;
    std::size_t b = 0;
    double weight = 0; // not negative; a link of no weight is none
    [[nodiscard]] std::size_t other(std::size_t node) const { return node == a ? b : a; }
};

class WeightedGraph {
public:
    WeightedGraph() = default;
    WeightedGraph(std::size_t nodes, std::vector<WeightedLink> links);

    [[nodiscard]] std::size_t size() const { return m_degree.size(); }
    [[nodiscard]] const std::vector<WeightedLink> &links() const { return m_links; }
    /// Sum of the weights at a node.
    [[nodiscard]] double degree(std::size_t node) const { return m_degree[node]; }
    /// Indices into links() of the links at a node.
    [[nodiscard]] std::span<const std::size_t> linksAt(std::size_t node) const
    {
        return std::span(m_at).subspan(m_first[node], m_first[node + 1] - m_first[node]);
    }
    /// Length of a link for shortest paths: 1 / weight; infinite for a link of no weight.
    [[nodiscard]] double length(std::size_t link) const { return 1 / m_links[link].weight; }

private:
    std::vector<WeightedLink> m_links;
    std::vector<double> m_degree;
    std::vector<std::size_t> m_first; // of each node's links in m_at
    std::vector<std::size_t> m_at;
};

} // namespace raphe
