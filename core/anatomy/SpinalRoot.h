// Where the spinal roots leave the spine: in the neck above the vertebra of their name, C8 below the seventh, from T1 on below.
// Source: common textbook anatomy.
#pragma once

#include "core/anatomy/Place.h"

#include <optional>
#include <string_view>

namespace raphe {

/// C1 to C8, T1 to T12, L1 to L5, S1 to S5 or Co1.
[[nodiscard]] bool isSpinalRoot(std::string_view text);

/// The segment at which a root ("C5") leaves; none for sacral and coccygeal roots, which leave through the sacrum or below it.
[[nodiscard]] std::optional<StructureId> segmentOf(std::string_view root);

} // namespace raphe
