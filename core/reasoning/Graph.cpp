#include "core/reasoning/Graph.h"

namespace raphe {

WeightedGraph::WeightedGraph(std::size_t nodes, std::vector<WeightedLink> links)
    : m_links(std::move(links)), m_degree(nodes, 0.0), m_first(nodes + 1, 0), m_at(2 * m_links.size())
{
    for (const WeightedLink &link : m_links) {
        for (const std::size_t end : {link.a, link.b}) {
            m_degree[end] += link.weight;
            ++m_first[end + 1];
        }
    }
    for (std::size_t node = 0; node < nodes; ++node)
        m_first[node + 1] += m_first[node];
    std::vector<std::size_t> next(m_first.begin(), m_first.end() - 1);
    for (std::size_t index = 0; index < m_links.size(); ++index)
        for (const std::size_t end : {m_links[index].a, m_links[index].b})
            m_at[next[end]++] = index;
}

} // namespace raphe
