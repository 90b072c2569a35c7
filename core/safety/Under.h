// Whether a structure lies under regions of the skin, as the rules and the warning signs take it.
#pragma once

#include "core/anatomy/Regions.h"

#include <vector>

namespace raphe {

/// Share of a structure's shape that must lie under a region. Our choice, no source: three tenths is hardly reached without
/// touching the region's skin.
inline constexpr double leastUnder = 0.3;

/// At least that share of its shape, or of less than that its mark. Where nothing of it lies, the mark does not stand.
[[nodiscard]] bool isUnder(const Regions &regions, const StructureId &id, const std::vector<StructureId> &skin);

} // namespace raphe
