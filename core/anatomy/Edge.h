// An edge that hands follow (iliac crest, medial border of the shoulder blade): who attaches where along it, in order, and
// how long it is in a patient. Plain values made from the atlas; no threads, nothing owned.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/base/Millimetres.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What attaches to a stretch of an edge.
struct Stretch {
    StructureId structure;
    std::string head;
    bool origin = false; // else insertion
    Along along;
    Grade evidence{};
    std::vector<std::string> sources;
};

struct Edge {
    StructureId structure;
    Border border;
    std::vector<Stretch> stretches; // by their start, then their end
};

/// Work along an attachment goes in steps of about 25 mm (common practice, no source).
inline constexpr Millimetres customaryStep{25};
/// What a stature may be, in mm: beyond the shortest and tallest adults on record (from memory, 546 and 2720 mm).
inline constexpr Millimetres leastStature{500};
inline constexpr Millimetres greatestStature{2800};

/// Nothing when the structure is no edge.
[[nodiscard]] std::optional<Edge> edgeOf(const Atlas &atlas, const StructureId &id);
/// How long a stretch of the edge is in a patient of this stature.
[[nodiscard]] Millimetres lengthOf(const Border &border, double from, double to, Millimetres stature);
/// How many steps cover this length; at least one.
[[nodiscard]] int stepsOver(Millimetres length, Millimetres step = customaryStep);

} // namespace raphe
