#include "core/reasoning/Spread.h"

#include <Eigen/Cholesky>
#include <Eigen/SparseCholesky>

#include <algorithm>
#include <numeric>

namespace raphe {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

Index at(std::size_t i)
{
    return static_cast<Index>(i);
}

} // namespace

struct WalkSolver::Factor {
    Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>> ldlt;
};

WalkSolver::WalkSolver(const WeightedGraph &graph, double restart) : m_graph(&graph), m_restart(restart)
{
    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(graph.size() + graph.links().size());
    for (std::size_t i = 0; i < graph.size(); ++i)
        entries.emplace_back(static_cast<int>(i), static_cast<int>(i), graph.degree(i) > 0 ? graph.degree(i) : 1.0);
    for (const WeightedLink &link : graph.links()) { // the lower triangle says all
        const auto [low, high] = std::minmax(link.a, link.b);
        entries.emplace_back(static_cast<int>(high), static_cast<int>(low), -(1 - restart) * link.weight);
    }
    Eigen::SparseMatrix<double> matrix(at(graph.size()), at(graph.size()));
    matrix.setFromTriplets(entries.begin(), entries.end());
    auto factor = std::make_unique<Factor>();
    factor->ldlt.compute(matrix);
    m_factor = std::move(factor);
    m_everywhere = walk(std::vector<double>(graph.size(), 1.0));
}

WalkSolver::~WalkSolver() = default;
WalkSolver::WalkSolver(WalkSolver &&) noexcept = default;

double WalkSolver::scale(std::size_t node) const
{
    const double degree = m_graph->degree(node);
    return m_restart * (degree > 0 ? degree : 1.0);
}

std::vector<double> WalkSolver::walk(const std::vector<double> &start, const std::vector<std::size_t> &absorbing) const
{
    const std::size_t n = m_graph->size();
    std::vector<double> p(n, 0.0);
    const double total = std::accumulate(start.begin(), start.end(), 0.0);
    if (total <= 0)
        return p;
    VectorXd y = m_factor->ldlt.solve(Eigen::Map<const VectorXd>(start.data(), at(n)) / total);
    if (!absorbing.empty()) { // the walk that ends at them: G less what has passed through
        const Index k = at(absorbing.size());
        MatrixXd columns(at(n), k);
        for (Index i = 0; i < k; ++i)
            columns.col(i) = m_factor->ldlt.solve(VectorXd::Unit(at(n), at(absorbing[static_cast<std::size_t>(i)])));
        MatrixXd among(k, k);
        VectorXd there(k);
        for (Index i = 0; i < k; ++i) {
            among.row(i) = columns.row(at(absorbing[static_cast<std::size_t>(i)]));
            there[i] = y[at(absorbing[static_cast<std::size_t>(i)])];
        }
        y -= columns * among.ldlt().solve(there);
        for (const std::size_t node : absorbing)
            y[at(node)] = 0;
    }
    for (std::size_t i = 0; i < n; ++i)
        p[i] = scale(i) * y[at(i)];
    for (const std::size_t node : absorbing) { // what starts there and what arrives
        p[node] = m_restart * start[node] / total;
        for (const std::size_t index : m_graph->linksAt(node)) {
            const WeightedLink &link = m_graph->links()[index];
            p[node] += m_restart * (1 - m_restart) * link.weight * y[at(link.other(node))];
        }
    }
    return p;
}

std::vector<double> WalkSolver::lift(const std::vector<double> &start, const std::vector<std::size_t> &absorbing) const
{
    std::vector<double> p = walk(start, absorbing);
    for (std::size_t i = 0; i < p.size(); ++i)
        p[i] /= m_everywhere[i];
    return p;
}

std::vector<double> WalkSolver::column(std::size_t node) const
{
    const VectorXd g = m_factor->ldlt.solve(VectorXd::Unit(at(m_graph->size()), at(node)));
    return {g.begin(), g.end()};
}

} // namespace raphe
