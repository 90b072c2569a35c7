// What must come before what in a plan, and why. No state; thread-safe.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/plan/Technique.h"
#include "core/plan/Treat.h"

#include <cstddef>
#include <utility>
#include <vector>

namespace raphe {

/// By hand: the practitioner moved it.
enum class OrderReason { ByHand, SkinFirst, JointFirst, ComplaintFirst };

struct OrderedPair {
    std::size_t first = 0; // of the candidates
    std::size_t second = 0;
    OrderReason reason{};
};

/// A place with the technique chosen for it.
struct PlanCandidate {
    Suggestion suggestion;
    const Technique *technique = nullptr;
    std::string why; // why this technique
    std::vector<CautionVerdict> cautions;
    int seconds = 0;
};

/// Pairs without a cycle: what the practitioner put in order, then skin before what lies deeper at the same place, then joints
/// before lengthening the muscles across them and the place of the complaint before the others, both where preferred. A pair that
/// would contradict earlier ones is left out.
[[nodiscard]] std::vector<OrderedPair> ordersOf(const Regions &regions, const std::vector<PlanCandidate> &candidates,
    const Preferences &preferences, const std::vector<std::pair<Place, Place>> &byHand);

} // namespace raphe
