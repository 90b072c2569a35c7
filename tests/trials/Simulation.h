// How many checks until the source of trouble is among the first three? Fixed before it was run, but for the decay, which was
// changed twice because it made no patient: with 2^(-l / median link) some 280 places of a body were sore; with ten sore places
// and 2^(-l / L) most complaints lay where they had nothing to do with the source.
//   - a source is drawn among all places that hands can check, all alike;
//   - the weight of every link is drawn anew for each trial, between half and twice its own (evenly in its logarithm);
//   - the trouble shows at a place with 1 - (1 - false positive)(1 - sensitivity 2^(-(l / L)^2)), l the shortest path from the
//     source on the drawn weights (length 1 / weight): not the model's own spread. L is such that, on the atlas's own weights,
//     the sum of 2^(-(l / L)^2) over all places is ten for the median source: about ten places are sore;
//   - one such place, drawn by 2^(-(l / L)^2), not the source, is the complaint and is found tender to begin with;
//   - one place is examined at a time, and shows the same whichever policy asks; all share one posterior, that of the program
//     with the sensitivity and the false positives of the level;
//   - the trial ends when the source is among the first three of the places that can be checked; 0 checks are possible; after
//     80 it is cut off.
// Policies: ours (most bits), the nearest unexamined place to anything found tender (on the atlas's own weights), the most
// connected first, and random.
#pragma once

#include "core/reasoning/Posterior.h"
#include "core/reasoning/Reach.h"
#include "core/reasoning/ShortestPaths.h"

#include <random>
#include <string>
#include <vector>

namespace raphe::trials {

struct Noise {
    double sensitivity = 0;
    double falsePositive = 0;
};
inline constexpr Noise levels[] = {{.9, .05}, {.8, .1}, {.7, .2}};

enum class Policy { Ours, Nearest, MostConnected, Random };
inline constexpr Policy policies[] = {Policy::Ours, Policy::Nearest, Policy::MostConnected, Policy::Random};
[[nodiscard]] std::string nameOf(Policy policy);

inline constexpr int checksAtMost = 80;

/// Checks needed by each trial; checksAtMost + 1 for those that were cut off.
struct Outcome {
    std::vector<int> checks;
    [[nodiscard]] double median() const;
    [[nodiscard]] int cutOff() const;
};

/// What all policies share.
struct World {
    const WeightedGraph *graph;
    const ReachTable *reach;
    const CheckTable *check;
    std::vector<double> prior; // of each source of the table, then of 'unexplained'
    double decay = 1; // L
};

/// L for this graph and these places to check.
[[nodiscard]] double decayLength(const WeightedGraph &graph, const std::vector<std::size_t> &places);

/// One outcome a policy, in the order of `policies`; the same trials for each.
[[nodiscard]] std::vector<Outcome> simulate(const World &world, const Noise &noise, int trials, unsigned seed);

/// How many of the same trials have the source among the first three once every place was examined: what no order of checks can
/// be expected to better by much.
[[nodiscard]] int foundWithAll(const World &world, const Noise &noise, int trials, unsigned seed);

} // namespace raphe::trials
