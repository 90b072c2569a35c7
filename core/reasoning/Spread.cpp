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
using Sparse = Eigen::SparseMatrix<double>;

Index at(std::size_t i)
{
    return static_cast<Index>(i);
}

} // namespace

// A pair of mirrored nodes has one unknown in the even system and one in the odd; a midline node only an even one. Its even
// row is halved, which keeps the matrix symmetric.
struct WalkSolver::Factor {
    std::vector<std::size_t> mirror;
    std::vector<Index> even; // of each node
    std::vector<Index> odd; // of each node; -1 on the midline
    Eigen::SimplicialLDLT<Sparse> evenSystem;
    Eigen::SimplicialLDLT<Sparse, Eigen::Lower, Eigen::NaturalOrdering<int>> oddSystem; // in the order found for the even one

    Factor(const WeightedGraph &graph, double restart, const std::vector<std::size_t> &image) : mirror(image)
    {
        if (mirror.empty()) {
            mirror.resize(graph.size());
            std::iota(mirror.begin(), mirror.end(), std::size_t{0});
        }
        even.resize(graph.size());
        Index evens = 0;
        for (std::size_t i = 0; i < graph.size(); ++i)
            even[i] = mirror[i] < i ? even[mirror[i]] : evens++;
        evenSystem.analyzePattern(system(graph, restart, even, evens, 1));

        std::vector<Index> place(graph.size(), -1); // of each even unknown that is a pair's, in the order of elimination
        for (std::size_t i = 0; i < graph.size(); ++i)
            if (mirror[i] != i)
                place[static_cast<std::size_t>(evenSystem.permutationP().indices()[even[i]])] = 0;
        Index odds = 0;
        for (Index &p : place)
            if (p == 0)
                p = odds++;
        odd.resize(graph.size(), -1);
        for (std::size_t i = 0; i < graph.size(); ++i)
            if (mirror[i] != i)
                odd[i] = place[static_cast<std::size_t>(evenSystem.permutationP().indices()[even[i]])];
        if (odds > 0)
            oddSystem.analyzePattern(system(graph, restart, odd, odds, -1));
        factorise(graph, restart);
    }

    void factorise(const WeightedGraph &graph, double restart)
    {
        evenSystem.factorize(system(graph, restart, even, evenSystem.rows(), 1));
        if (oddSystem.rows() > 0)
            oddSystem.factorize(system(graph, restart, odd, oddSystem.rows(), -1));
    }

    // Lower triangle of D - (1 - c) W folded onto the unknowns; `sign`: of a value on the far side, against the near
    // one.
    [[nodiscard]] Sparse system(
        const WeightedGraph &graph, double restart, const std::vector<Index> &unknown, Index size, double sign) const
    {
        std::vector<Eigen::Triplet<double, Index>> entries;
        entries.reserve(graph.size() + graph.links().size());
        for (std::size_t i = 0; i < graph.size(); ++i)
            if (unknown[i] >= 0) // both of a pair add their half, a midline node adds its one half
                entries.emplace_back(unknown[i], unknown[i], (graph.degree(i) > 0 ? graph.degree(i) : 1.0) / 2);
        const auto isFar = [&](std::size_t node) { return mirror[node] < node; };
        const auto isMidline = [&](std::size_t node) { return mirror[node] == node; };
        for (const WeightedLink &link : graph.links()) {
            const auto [low, high] = std::minmax(unknown[link.a], unknown[link.b]);
            const bool isOwnImage = even[link.a] == even[link.b];
            if (low < 0 || (isFar(isMidline(link.a) ? link.b : link.a) && !isOwnImage)) // its mirror image speaks for it
                continue;
            double value = -(1 - restart) * link.weight;
            if (isFar(link.a) != isFar(link.b) && !isMidline(link.a) && !isMidline(link.b))
                value *= sign;
            if (isMidline(link.a) && isMidline(link.b))
                value /= 2;
            entries.emplace_back(high, low, value);
        }
        Sparse matrix(size, size);
        matrix.setFromTriplets(entries.begin(), entries.end());
        return matrix;
    }

    [[nodiscard]] VectorXd solve(const VectorXd &right) const
    {
        VectorXd rightEven = VectorXd::Zero(evenSystem.rows());
        VectorXd rightOdd = VectorXd::Zero(oddSystem.rows());
        for (std::size_t i = 0; i < mirror.size(); ++i) {
            rightEven[even[i]] += right[at(i)] / 2;
            if (odd[i] >= 0)
                rightOdd[odd[i]] += (mirror[i] < i ? -right[at(i)] : right[at(i)]) / 2;
        }
        const VectorXd e = evenSystem.solve(rightEven);
        const VectorXd o = rightOdd.size() > 0 ? VectorXd(oddSystem.solve(rightOdd)) : rightOdd;
        VectorXd out(right.size());
        for (std::size_t i = 0; i < mirror.size(); ++i)
            out[at(i)] = odd[i] < 0 ? e[even[i]] : (mirror[i] < i ? e[even[i]] - o[odd[i]] : e[even[i]] + o[odd[i]]);
        return out;
    }
};

WalkSolver::WalkSolver(const WeightedGraph &graph, double restart, const std::vector<std::size_t> &mirror)
    : m_graph(&graph), m_restart(restart), m_factor(std::make_unique<Factor>(graph, restart, mirror))
{
    m_everywhere = walk(std::vector<double>(graph.size(), 1.0));
}

WalkSolver::~WalkSolver() = default;

void WalkSolver::reweigh(const WeightedGraph &graph)
{
    m_graph = &graph;
    m_factor->factorise(graph, m_restart);
    m_everywhere = walk(std::vector<double>(graph.size(), 1.0));
}

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
    VectorXd y = m_factor->solve(Eigen::Map<const VectorXd>(start.data(), at(n)) / total);
    if (!absorbing.empty()) { // the walk that ends at them: G less what has passed through
        const Index k = at(absorbing.size());
        MatrixXd columns(at(n), k);
        for (Index i = 0; i < k; ++i)
            columns.col(i) = m_factor->solve(VectorXd::Unit(at(n), at(absorbing[static_cast<std::size_t>(i)])));
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
    const VectorXd g = m_factor->solve(VectorXd::Unit(at(m_graph->size()), at(node)));
    return {g.begin(), g.end()};
}

} // namespace raphe
