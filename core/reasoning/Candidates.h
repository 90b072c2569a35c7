// Which places can be the source of trouble, how likely each is before any finding, and which of them hands can check.
#pragma once

#include "core/reasoning/Linkage.h"

namespace raphe {

struct Candidates {
    std::vector<std::size_t> sources; // nodes: muscles, fasciae, ligaments, tendons, joints, superficial fascia; in order
    std::vector<double> prior; // of each source, adding up to 1, then of 'not explained by what was found'
    std::vector<bool> isWhole; // of each source: has parts, which are offered in its place
    std::vector<std::size_t> checks; // nodes, in order: drawn, so that hands can reach them; the parts of a whole, not the whole
};

[[nodiscard]] Candidates candidatesOf(const Linkage &linkage, const Body &body, const Constants &constants);

} // namespace raphe
