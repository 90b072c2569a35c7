// Tables that depend on the atlas alone, computed once: how well a trouble at one place would be felt at another.
// Prediction of source s at place j: h = P_s(j) / P_j(j) = G(s,j) / G(j,j), the chance that a walk from s ever stands at j;
// 1 at s itself, between 0 and 1 elsewhere. Immutable, thread-safe.
#pragma once

#include "core/reasoning/Spread.h"

namespace raphe {

class ReachTable {
public:
    /// `mirror` maps each node to its mirror image; sources must hold the image of each of theirs. What is true on the left
    /// is then true on the right to the last bit.
    ReachTable(
        const WalkSolver &solver, std::size_t nodes, std::vector<std::size_t> sources, const std::vector<std::size_t> &mirror);

    [[nodiscard]] const std::vector<std::size_t> &sources() const { return m_sources; }
    /// h of all sources at a node, in the order of sources().
    [[nodiscard]] std::span<const double> at(std::size_t node) const
    {
        return std::span(m_reach).subspan(node * m_sources.size(), m_sources.size());
    }
    /// G(j,j).
    [[nodiscard]] double diagonal(std::size_t node) const { return m_diagonal[node]; }
    [[nodiscard]] std::size_t bytes() const { return (m_reach.size() + m_diagonal.size()) * sizeof(double); }

private:
    std::vector<std::size_t> m_sources;
    std::vector<double> m_reach;
    std::vector<double> m_diagonal;
};

} // namespace raphe
