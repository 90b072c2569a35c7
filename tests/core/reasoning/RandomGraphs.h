// Small random graphs for checks by brute force, seeded; and the reach between all their nodes by a dense inverse.
#pragma once

#include "core/reasoning/Graph.h"

#include <Eigen/LU>

#include <random>

namespace raphe::test {

class RandomGraphs {
public:
    explicit RandomGraphs(unsigned seed) : m_engine(seed) { }

    std::size_t below(std::size_t limit) { return m_engine() % limit; } // the same on every platform
    double between(double low, double high) { return low + (high - low) * static_cast<double>(m_engine()) / 4294967296.0; }

    /// 4 to 9 nodes in a ring or a line, and some more links; parallel ones and nodes without a link happen.
    WeightedGraph next()
    {
        const std::size_t n = 4 + below(6);
        std::vector<WeightedLink> links;
        const std::size_t lonely = below(4) == 0 ? 1 : 0;
        for (std::size_t i = 0; i + 1 + lonely < n; ++i)
            links.push_back({i, i + 1, between(0.05, 1)});
        for (std::size_t more = below(6); more > 0; --more) {
            const std::size_t a = below(n - lonely);
            const std::size_t b = below(n - lonely);
            if (a != b)
                links.push_back({a, b, between(0.05, 1)});
        }
        return {n, std::move(links)};
    }

private:
    std::mt19937 m_engine;
};

/// G of Spread.h by a dense inverse of its definition.
inline Eigen::MatrixXd denseG(const WeightedGraph &graph, double restart)
{
    const auto n = static_cast<Eigen::Index>(graph.size());
    Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(n, n);
    for (const WeightedLink &link : graph.links()) {
        const auto a = static_cast<Eigen::Index>(link.a);
        const auto b = static_cast<Eigen::Index>(link.b);
        matrix(a, a) += link.weight;
        matrix(b, b) += link.weight;
        matrix(a, b) -= (1 - restart) * link.weight;
        matrix(b, a) -= (1 - restart) * link.weight;
    }
    for (Eigen::Index i = 0; i < n; ++i)
        if (matrix(i, i) == 0)
            matrix(i, i) = 1;
    return matrix.inverse();
}

} // namespace raphe::test
