#include "core/reasoning/Reach.h"

#include <limits>

namespace raphe {

ReachTable::ReachTable(
    const WalkSolver &solver, std::size_t nodes, std::vector<std::size_t> sources, const std::vector<std::size_t> &mirror)
    : m_sources(std::move(sources)), m_reach(nodes * m_sources.size()), m_diagonal(nodes)
{
    const std::size_t count = m_sources.size();
    constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
    std::vector<std::size_t> indexOf(nodes, none);
    for (std::size_t s = 0; s < count; ++s)
        indexOf[m_sources[s]] = s;
    std::vector<std::size_t> image(count); // index of the mirrored source
    for (std::size_t s = 0; s < count; ++s)
        image[s] = indexOf[mirror[m_sources[s]]];

    for (std::size_t node = 0; node < nodes; ++node) {
        const std::size_t other = mirror[node];
        if (other < node) { // done with its mirror image
            m_diagonal[node] = m_diagonal[other];
            for (std::size_t s = 0; s < count; ++s)
                m_reach[node * count + s] = m_reach[other * count + image[s]];
            continue;
        }
        const std::vector<double> column = solver.column(node);
        m_diagonal[node] = column[node];
        for (std::size_t s = 0; s < count; ++s)
            m_reach[node * count + s] = column[m_sources[s]] / column[node]; // exactly 1 at home
    }
}

} // namespace raphe
