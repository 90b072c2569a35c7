#include "core/reasoning/Between.h"

namespace raphe {

Between::Between(const WalkSolver &walk, const ReachTable &reach, const std::vector<std::size_t> &sourceOf)
    : m_walk(walk), m_reach(reach), m_sourceOf(sourceOf)
{
}

double Between::g(std::size_t a, std::size_t b)
{
    if (m_sourceOf[a] != notASource)
        return m_reach.at(b)[m_sourceOf[a]] * m_reach.diagonal(b);
    if (m_sourceOf[b] != notASource)
        return m_reach.at(a)[m_sourceOf[b]] * m_reach.diagonal(a);
    auto it = m_columns.find(b);
    if (it == m_columns.end())
        it = m_columns.emplace(b, m_walk.column(b)).first;
    return it->second[a];
}

Eigen::MatrixXd Between::block(const std::vector<std::size_t> &rows, const std::vector<std::size_t> &columns)
{
    Eigen::MatrixXd out(static_cast<Eigen::Index>(rows.size()), static_cast<Eigen::Index>(columns.size()));
    for (std::size_t j = 0; j < columns.size(); ++j)
        for (std::size_t i = 0; i < rows.size(); ++i)
            out(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) = g(rows[i], columns[j]);
    return out;
}

Eigen::VectorXd valuesAt(const std::vector<double> &values, const std::vector<std::size_t> &nodes)
{
    Eigen::VectorXd out(static_cast<Eigen::Index>(nodes.size()));
    for (std::size_t i = 0; i < nodes.size(); ++i)
        out[static_cast<Eigen::Index>(i)] = values[nodes[i]];
    return out;
}

} // namespace raphe
