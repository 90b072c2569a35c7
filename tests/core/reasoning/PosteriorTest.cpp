// Posterior and information gain against plain enumeration on random small graphs: every source, every outcome.
#include "tests/core/reasoning/RandomGraphs.h"

#include "core/reasoning/Posterior.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace raphe::test {

namespace {

using Eigen::Index;

constexpr double restart = 0.3;
constexpr int graphs = 200; // as many as the issue asks for; they are small

struct Case {
    WeightedGraph graph;
    std::vector<double> prior; // of each node, then of 'unexplained'
    std::vector<Observation> observations;
    Detection check;
};

Case randomCase(RandomGraphs &random)
{
    Case c{random.next(), {}, {}, {random.between(0.3, 0.95), random.between(0.02, 0.3)}};
    for (std::size_t i = 0; i <= c.graph.size(); ++i)
        c.prior.push_back(random.between(0.05, 2));
    for (std::size_t k = random.below(6); k > 0; --k)
        c.observations.push_back({random.below(c.graph.size()), random.below(2) == 0,
            {random.between(0.3, 0.95), random.between(0.02, 0.3)}, random.below(3) == 0 ? 0.5 : 1.0});
    return c;
}

// From the definition: h = P_s(j) / P_j(j) of the walk with restart, whose row s is c G(s,j) d(j).
double reachOf(const Eigen::MatrixXd &g, std::size_t s, std::size_t j)
{
    return g(static_cast<Index>(s), static_cast<Index>(j)) / g(static_cast<Index>(j), static_cast<Index>(j));
}

// Likelihood of all observations when the source is s; s = number of nodes stands for none.
double likelihood(const Case &c, const Eigen::MatrixXd &g, std::size_t s)
{
    double product = 1;
    for (const Observation &o : c.observations) {
        const double h = s < c.graph.size() ? reachOf(g, s, o.node) : 0;
        const double found = 1 - (1 - o.detection.leak) * (1 - o.detection.detect * h);
        product *= std::pow(o.isPositive ? found : 1 - found, o.weight);
    }
    return product;
}

std::vector<double> enumerated(const Case &c, const Eigen::MatrixXd &g)
{
    std::vector<double> p;
    for (std::size_t s = 0; s <= c.graph.size(); ++s)
        p.push_back(c.prior[s] * likelihood(c, g, s));
    const double total = std::accumulate(p.begin(), p.end(), 0.0);
    for (double &value : p)
        value /= total;
    return p;
}

double entropy(const std::vector<double> &p)
{
    double bits = 0;
    for (const double value : p)
        bits -= value > 0 ? value * std::log2(value) : 0;
    return bits;
}

// Entropy now, less the mean entropy after each outcome.
double enumeratedGain(Case c, const Eigen::MatrixXd &g, std::size_t node)
{
    const std::vector<double> now = enumerated(c, g);
    double chance = 0;
    for (std::size_t s = 0; s <= c.graph.size(); ++s) {
        const double h = s < c.graph.size() ? reachOf(g, s, node) : 0;
        chance += now[s] * (1 - (1 - c.check.leak) * (1 - c.check.detect * h));
    }
    double after = 0;
    for (const bool found : {true, false}) {
        c.observations.push_back({node, found, c.check, 1});
        after += (found ? chance : 1 - chance) * entropy(enumerated(c, g));
        c.observations.pop_back();
    }
    return entropy(now) - after;
}

struct Answer {
    Posterior posterior;
    std::vector<double> gains;
};

Answer answer(const Case &c)
{
    std::vector<std::size_t> all(c.graph.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    const WalkSolver solver(c.graph, restart);
    const ReachTable table(solver, c.graph.size(), all, all);
    Answer out;
    out.posterior = normalised(logPosterior(table, c.prior, c.observations));
    const CheckTable checks(table, all, c.check);
    Outcomes outcomes(table, checks, out.posterior);
    for (const std::size_t node : all)
        out.gains.push_back(outcomes.bitsOf(node));
    return out;
}

TEST(Posterior, IsThatOfEnumeration)
{
    RandomGraphs random(41);
    for (int i = 0; i < graphs; ++i) {
        const Case c = randomCase(random);
        const auto wanted = enumerated(c, denseG(c.graph, restart));
        const Posterior posterior = answer(c).posterior;
        for (std::size_t s = 0; s < c.graph.size(); ++s)
            ASSERT_NEAR(posterior.of[s], wanted[s], 1e-10) << "graph " << i << ", source " << s;
        ASSERT_NEAR(posterior.unexplained, wanted.back(), 1e-10) << "graph " << i;
    }
}

TEST(Posterior, TheGainIsThatOfEnumeration)
{
    RandomGraphs random(42);
    for (int i = 0; i < graphs; ++i) {
        const Case c = randomCase(random);
        const Eigen::MatrixXd g = denseG(c.graph, restart);
        const auto gains = answer(c).gains;
        for (std::size_t node = 0; node < c.graph.size(); ++node)
            ASSERT_NEAR(gains[node], enumeratedGain(c, g, node), 1e-10) << "graph " << i << ", node " << node;
    }
}

// Mean entropy after all outcomes of these checks together, each node once.
double entropyAfter(Case c, const Eigen::MatrixXd &g, std::vector<std::size_t> nodes)
{
    if (nodes.empty())
        return entropy(enumerated(c, g));
    const std::size_t node = nodes.back();
    nodes.pop_back();
    const std::vector<double> now = enumerated(c, g);
    double chance = 0;
    for (std::size_t s = 0; s <= c.graph.size(); ++s)
        chance += now[s] * c.check.chance(s < c.graph.size() ? reachOf(g, s, node) : 0);
    double after = 0;
    for (const bool found : {true, false}) {
        c.observations.push_back({node, found, c.check, 1});
        after += (found ? chance : 1 - chance) * entropyAfter(c, g, nodes);
        c.observations.pop_back();
    }
    return after;
}

TEST(Posterior, WhatACheckAddsToOthersIsThatOfEnumeration)
{
    RandomGraphs random(44);
    for (int i = 0; i < graphs; ++i) {
        const Case c = randomCase(random);
        const Eigen::MatrixXd g = denseG(c.graph, restart);
        std::vector<std::size_t> all(c.graph.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        const WalkSolver solver(c.graph, restart);
        const ReachTable table(solver, c.graph.size(), all, all);
        const CheckTable checks(table, all, c.check);
        const Posterior posterior = normalised(logPosterior(table, c.prior, c.observations));
        Outcomes outcomes(table, checks, posterior);
        std::vector<std::size_t> made;
        double before = entropyAfter(c, g, {});
        for (std::size_t node = 0; node < std::min<std::size_t>(4, c.graph.size()); ++node) {
            const double alone = outcomes.bitsAlone(node);
            ASSERT_NEAR(alone, Outcomes(table, checks, posterior).bitsOf(node), 1e-14) << "graph " << i << ", node " << node;
            ASSERT_LE(alone, outcomes.bitsAtMost(node) + 1e-14) << "graph " << i << ", node " << node;
            const double bits = outcomes.bitsOf(node);
            ASSERT_LE(bits, alone + 1e-12) << "graph " << i << ", node " << node << ": other checks never make it tell more";
            made.push_back(node);
            const double after = entropyAfter(c, g, made);
            ASSERT_NEAR(bits, before - after, 1e-10) << "graph " << i << ", node " << node;
            outcomes.add(node);
            before = after;
        }
    }
}

TEST(Posterior, ReachIsOneAtHomeAndLessElsewhere)
{
    RandomGraphs random(43);
    for (int i = 0; i < graphs; ++i) {
        const WeightedGraph graph = random.next();
        std::vector<std::size_t> all(graph.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        const WalkSolver solver(graph, restart);
        const ReachTable table(solver, graph.size(), all, all);
        for (std::size_t j = 0; j < graph.size(); ++j)
            for (std::size_t s = 0; s < graph.size(); ++s)
                if (s == j)
                    ASSERT_EQ(table.at(j)[s], 1.0);
                else
                    ASSERT_TRUE(table.at(j)[s] >= 0 && table.at(j)[s] < 1) << table.at(j)[s];
    }
}

} // namespace

} // namespace raphe::test
