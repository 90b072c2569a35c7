// Whether complaint and findings stand on opposite sides of the body, which may be a slip of the pen. Plain functions of
// immutable values; any thread.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/reasoning/Linkage.h"
#include "core/record/Visit.h"

#include <optional>
#include <vector>

namespace raphe {

struct SideQuestion {
    Side complaint{}; // left or right; the findings are on the other side
    std::vector<Place> found; // those that nothing explains
    bool operator==(const SideQuestion &) const = default;
};

/// A question when it hurts on one side only, everything found is on the other one, and not all of it is tied to where it hurts
/// by a continuity that changes the side (as trace() finds them). Nothing found, or something in the middle: no question. Where
/// no place of the complaint is told, what was painted counts.
[[nodiscard]] std::optional<SideQuestion> sideQuestion(const Linkage &linkage, const Regions &regions, const Visit &visit);

} // namespace raphe
