// All that is built into the program, read and checked once: atlas, drawings, skin regions, constants and the linkage made of
// them.
// Movable, not copyable; the parts keep their addresses. Immutable after reading, so it may be shared between threads.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/reasoning/Linkage.h"

#include <memory>

namespace raphe {

struct Knowledge {
    std::unique_ptr<const Atlas> atlas;
    std::unique_ptr<const Body> body;
    std::unique_ptr<const Regions> regions;
    std::unique_ptr<const Constants> constants;
    std::unique_ptr<const Linkage> linkage;
};

[[nodiscard]] Result<Knowledge> readKnowledge();

} // namespace raphe
