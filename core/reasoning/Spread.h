// Random walk with restart on a weighted graph, solved exactly: one sparse Cholesky factorisation for a graph, then every
// start, every set of absorbing places and every reach is a solve. Immutable after construction, thread-safe.
//
// With W the weights, D the degrees, c the restart and P = D^-1 W, the walk p = c e + (1 - c) P^T p is p = c D G e with
// G = (D - (1 - c) W)^-1, a symmetric positive definite matrix. A place without links keeps c e.
// The body is its own mirror image, so what is even and what is odd under mirroring is solved apart: two systems of half the
// size, and the answer to the mirrored start is the mirrored answer to the last bit.
#pragma once

#include "core/reasoning/Graph.h"

#include <memory>

namespace raphe {

class WalkSolver {
public:
    /// `restart` above 0 and below 1. `mirror`: of each node its mirror image, which the links must respect; empty: a graph
    /// without one. Keeps a reference to the graph.
    WalkSolver(const WeightedGraph &graph, double restart, const std::vector<std::size_t> &mirror = {});
    ~WalkSolver();
    WalkSolver(WalkSolver &&) noexcept;
    WalkSolver &operator=(WalkSolver &&) = delete;

    /// Other weights on the same links: factorises anew, in the order of elimination that was found.
    void reweigh(const WeightedGraph &graph);

    /// The walk from `start` (one value a node, not negative; normalised here; all zeros give zeros). `absorbing` nodes keep
    /// what reaches them: nothing passes through.
    [[nodiscard]] std::vector<double> walk(
        const std::vector<double> &start, const std::vector<std::size_t> &absorbing = {}) const;
    /// The walk from everywhere, each node alike, nothing absorbing.
    [[nodiscard]] const std::vector<double> &everywhere() const { return m_everywhere; }
    /// walk / everywhere: above 1 where the start reaches more than chance, so that big structures do not win by size.
    [[nodiscard]] std::vector<double> lift(
        const std::vector<double> &start, const std::vector<std::size_t> &absorbing = {}) const;
    /// Column of G, and row, for it is symmetric.
    [[nodiscard]] std::vector<double> column(std::size_t node) const;
    /// What turns G into the walk: c times the degree (of a node without links: c).
    [[nodiscard]] double scale(std::size_t node) const;

private:
    struct Factor;
    const WeightedGraph *m_graph;
    double m_restart;
    std::unique_ptr<Factor> m_factor;
    std::vector<double> m_everywhere;
};

} // namespace raphe
