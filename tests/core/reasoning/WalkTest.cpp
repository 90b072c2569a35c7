// The walk against a dense solve of the same equations, written here from the definition in Spread.h.
#include "tests/core/reasoning/Visits.h"

#include "tests/support/Published.h"

#include "core/reasoning/Reason.h"
#include "core/reasoning/Spread.h"

#include <Eigen/LU>

#include <gtest/gtest.h>

#include <cmath>

namespace raphe::test {

namespace {

using Index = Eigen::Index;

struct Start {
    std::vector<double> strength;
    std::vector<bool> absorbing;
    std::vector<std::size_t> nodes() const
    {
        std::vector<std::size_t> out;
        for (std::size_t i = 0; i < absorbing.size(); ++i)
            if (absorbing[i])
                out.push_back(i);
        return out;
    }
};

const WalkSolver &solver()
{
    static const WalkSolver made(linkage().graph(), constants()["restart"], linkage().mirror());
    return made;
}

// What is found pulls; what was checked and is clear in every respect, and found nowhere, lets nothing through.
Start startOf(const Visit &visit)
{
    const std::size_t n = linkage().places().size();
    Start start{std::vector<double>(n, 0.0), std::vector<bool>(n, false)};
    std::vector<bool> found(n, false);
    for (const Finding &f : visit.findings) {
        const auto nodes = linkage().nodesOf(f.place);
        for (const std::size_t node : nodes) {
            start.strength[node] += strengthOf(f, constants()) / static_cast<double>(nodes.size());
            found[node] = found[node] || f.isFound();
            start.absorbing[node] = start.absorbing[node] || f.isClear();
        }
    }
    for (std::size_t i = 0; i < n; ++i)
        start.absorbing[i] = start.absorbing[i] && !found[i];
    return start;
}

/// p = c e + (1 - c) P^T p with every row of P summing to 1, except absorbing ones, which are 0.
Eigen::VectorXd denseWalk(const Start &start)
{
    const double c = constants()["restart"];
    const auto n = static_cast<Index>(start.strength.size());
    Eigen::MatrixXd weights = Eigen::MatrixXd::Zero(n, n);
    for (const Link &link : linkage().links()) {
        weights(static_cast<Index>(link.a), static_cast<Index>(link.b)) += link.weight;
        weights(static_cast<Index>(link.b), static_cast<Index>(link.a)) += link.weight;
    }
    Eigen::MatrixXd system = Eigen::MatrixXd::Identity(n, n);
    for (Index from = 0; from < n; ++from) {
        const double out = weights.row(from).sum();
        if (out > 0 && !start.absorbing[static_cast<std::size_t>(from)])
            system.col(from) -= (1 - c) / out * weights.row(from).transpose();
    }
    Eigen::VectorXd e(n);
    for (Index i = 0; i < n; ++i)
        e[i] = start.strength[static_cast<std::size_t>(i)];
    e /= e.sum();
    return system.partialPivLu().solve(c * e); // diagonally dominant: no more pivoting is needed
}

double largestDifference(const std::vector<double> &sparse, const Eigen::VectorXd &dense)
{
    double largest = 0;
    for (Index i = 0; i < dense.size(); ++i)
        largest = std::max(largest, std::abs(sparse[static_cast<std::size_t>(i)] - dense[i]));
    return largest;
}

const Visit twoFindingsAndThreeClears = visitOf(
    {tender("gluteus-maximus", Side::Right, 3), stiff("l4-l5", Side::Midline, 2), clearOf({{"thoracolumbar-fascia"}, Side::Left}),
        clearOf({{"piriformis"}, Side::Right}), clearOf({{"hip-joint"}, Side::Right})});

TEST(Walk, AgreesWithADenseSolveWhenPlacesAreClear)
{
    RandomVisits random(7);
    for (const Visit &visit : {twoFindingsAndThreeClears, random.next(), random.next()}) {
        Start start = startOf(visit);
        start.strength[0] += 0.25; // so that a visit without a finding starts somewhere
        const auto sparse = solver().walk(start.strength, start.nodes());
        EXPECT_LT(largestDifference(sparse, denseWalk(start)), 1e-10);
    }
}

TEST(Walk, LiftIsTheWalkOverTheWalkFromEverywhere)
{
    const Start start = startOf(twoFindingsAndThreeClears);
    const std::size_t n = start.strength.size();
    const Eigen::VectorXd from = denseWalk(start);
    const Eigen::VectorXd everywhere = denseWalk({std::vector<double>(n, 1.0), std::vector<bool>(n, false)});
    const auto lifts = liftOf(twoFindingsAndThreeClears.findings);
    for (std::size_t i = 0; i < n; ++i)
        ASSERT_NEAR(lifts[i], from[static_cast<Index>(i)] / everywhere[static_cast<Index>(i)], 1e-8) << linkage().places()[i];
}

TEST(Walk, KeepsAllOfTheStartWhenNothingIsClear)
{
    const Start start = startOf(visitOf({tender("gluteus-maximus", Side::Right, 3)}));
    const auto p = solver().walk(start.strength);
    double sum = 0;
    for (const double value : p) {
        EXPECT_GE(value, -1e-12);
        sum += value;
    }
    EXPECT_NEAR(sum, 1, 1e-9) << "a walk goes somewhere";
}

TEST(Walk, AnEmptyStartGivesZeros)
{
    const std::size_t n = linkage().places().size();
    for (const double value : solver().lift(std::vector<double>(n, 0.0)))
        ASSERT_EQ(value, 0);
}

TEST(Walk, ALinkOfNoWeightIsNoLink)
{
    // Everything of one grade set to nothing must not divide by nothing.
    nlohmann::json all = shippedConstants();
    all["constants"]["grade-described"]["value"] = 0;
    const auto read = readConstants(all.dump(), "test");
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    const Linkage thin(atlas(), body(), read.value());
    const WalkSolver walk(thin.graph(), read.value()["restart"]);
    for (const double value : walk.lift(raphe::startOf(thin, {tender("gluteus-maximus", Side::Right, 3)}, read.value())))
        ASSERT_TRUE(std::isfinite(value));
}

} // namespace

} // namespace raphe::test
