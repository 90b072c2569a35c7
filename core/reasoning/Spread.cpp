#include "core/reasoning/Spread.h"

#include <Eigen/SparseCore>
#include <Eigen/SparseLU>

#include <numeric>

namespace raphe {

std::vector<double> walk(const Linkage &linkage, std::vector<double> start, const std::vector<bool> &absorbing, double restart)
{
    const auto n = linkage.places().size();
    const double total = std::accumulate(start.begin(), start.end(), 0.0);
    if (total <= 0)
        return std::vector<double>(n, 0.0);

    std::vector<double> out(n, 0.0);
    for (const Link &link : linkage.links()) {
        out[link.a] += link.weight;
        out[link.b] += link.weight;
    }
    using Triplet = Eigen::Triplet<double>;
    std::vector<Triplet> entries;
    entries.reserve(n + 2 * linkage.links().size());
    for (std::size_t i = 0; i < n; ++i)
        entries.emplace_back(static_cast<int>(i), static_cast<int>(i), 1.0);
    const auto step = [&](std::size_t from, std::size_t to, double weight) {
        if (!absorbing[from] && weight > 0) // a link of no weight is none, also where a place has no other
            entries.emplace_back(static_cast<int>(to), static_cast<int>(from), -(1 - restart) * weight / out[from]);
    };
    for (const Link &link : linkage.links()) {
        step(link.a, link.b, link.weight);
        step(link.b, link.a, link.weight);
    }
    const auto size = static_cast<Eigen::Index>(n);
    Eigen::SparseMatrix<double> matrix(size, size);
    matrix.setFromTriplets(entries.begin(), entries.end());
    Eigen::SparseLU<Eigen::SparseMatrix<double>> solver(matrix);
    Eigen::VectorXd right(size);
    for (std::size_t i = 0; i < n; ++i)
        right[static_cast<Eigen::Index>(i)] = restart * start[i] / total;
    const Eigen::VectorXd p = solver.solve(right);
    return {p.begin(), p.end()};
}

std::vector<double> lift(
    const Linkage &linkage, const std::vector<double> &start, const std::vector<bool> &absorbing, double restart)
{
    const auto n = linkage.places().size();
    std::vector<double> p = walk(linkage, start, absorbing, restart);
    const std::vector<double> everywhere = walk(linkage, std::vector<double>(n, 1.0), std::vector<bool>(n, false), restart);
    for (std::size_t i = 0; i < n; ++i)
        p[i] /= everywhere[i];
    return p;
}

} // namespace raphe
