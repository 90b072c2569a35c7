// How many checks until the source of trouble is among the first three? Fixed before it was first run:
//   - a source is drawn among all places that hands can check, all alike;
//   - the weight of every link is drawn anew for each trial, between half and twice its own (evenly in its logarithm);
//   - the trouble shows at a place with 1 - (1 - false positive)(1 - sensitivity 2^(-l / L)), l the shortest path from the
//     source on the drawn weights (length 1 / weight) and L the median length of a link: not the model's own spread;
//   - one such place, drawn by 2^(-l / L), not the source, is the complaint and is found tender to begin with;
//   - one place is examined at a time and is the same for every policy; all share one posterior, that of the program;
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
};

/// One outcome a policy, in the order of `policies`; the same trials for each.
[[nodiscard]] std::vector<Outcome> simulate(const World &world, const Noise &noise, int trials, unsigned seed);

} // namespace raphe::trials
