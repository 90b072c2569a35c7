// What one place is tied to, ring by ring: for lighting up on the body and for the list beside it.
#pragma once

#include "core/reasoning/Paths.h"

#include <vector>

namespace raphe {

enum class TraceGroup {
    Continuity, // along continuities, up to three steps
    SharedAttachment, // muscles and fasciae that hold on to the same landmark, ligament or fascia
    AcrossJoint, // joints that a muscle acts across, or muscles across a joint
    Neighbour // what lies directly over or under
};

struct Traced {
    Place place;
    TraceGroup group{};
    std::vector<PathStep> path; // from the traced place; path.size() is the ring
};

inline constexpr std::size_t traceStepsAtMost = 3;

/// Sorted by group, then ring, then the weakest grade on the path (best first), then name.
/// A midline finding of a spinal segment is traced on both sides.
[[nodiscard]] std::vector<Traced> trace(const Linkage &linkage, const Place &from);

} // namespace raphe
