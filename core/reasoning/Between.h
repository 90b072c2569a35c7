// The walk's G (Spread.h) between a few nodes: from the table where one of two is a source, otherwise solved once and kept.
// Lives for one answer; not thread-safe.
#pragma once

#include "core/reasoning/Reach.h"

#include <Eigen/Core>

#include <map>

namespace raphe {

class Between {
public:
    /// `sourceOf`: of each node its index among the table's sources, or `notASource`.
    Between(const WalkSolver &walk, const ReachTable &reach, const std::vector<std::size_t> &sourceOf);

    static constexpr std::size_t notASource = static_cast<std::size_t>(-1);

    [[nodiscard]] Eigen::MatrixXd block(const std::vector<std::size_t> &rows, const std::vector<std::size_t> &columns);

private:
    [[nodiscard]] double g(std::size_t a, std::size_t b);

    const WalkSolver &m_walk;
    const ReachTable &m_reach;
    const std::vector<std::size_t> &m_sourceOf;
    std::map<std::size_t, std::vector<double>> m_columns;
};

[[nodiscard]] Eigen::VectorXd valuesAt(const std::vector<double> &values, const std::vector<std::size_t> &nodes);

} // namespace raphe
