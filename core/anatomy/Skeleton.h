// The skeleton as a tree of bones joined by tree joints, on the folded (unsided) body, and what muscles cross.
#pragma once

#include "core/anatomy/Structure.h"

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace raphe {

class Atlas;

class Skeleton {
public:
    explicit Skeleton(const std::vector<Joint> &joints);

    /// The first tree joint that closes a ring, if any.
    [[nodiscard]] std::optional<StructureId> cycle() const { return m_cycle; }
    /// The first bone that the tree does not reach from the others, if any.
    [[nodiscard]] std::optional<StructureId> gap(const std::vector<StructureId> &bones) const;
    /// Tree joints between two bones, in order from the first; empty for the same bone.
    [[nodiscard]] std::vector<StructureId> path(const StructureId &from, const StructureId &to) const;

private:
    struct Edge {
        std::string bone;
        StructureId joint;
    };
    std::unordered_map<std::string, std::vector<Edge>> m_edges;
    std::optional<StructureId> m_cycle;
};

/// For each muscle: the tree path between each origin and each insertion of the same head (basis computed, grade of
/// the best head that shows it), plus what it states by Span (basis stated). Ends on soft tissue are ends there.
[[nodiscard]] std::vector<Crossing> computeCrossings(const Atlas &atlas);

} // namespace raphe
