// The skeleton as a tree of bones joined by tree joints, on the folded (unsided) body, and what muscles cross.
#pragma once

#include "core/anatomy/Structure.h"

#include <cstddef>
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
    // A bone of the rooted tree: the joint and the bone towards the root, and how far away that is.
    struct Node {
        std::size_t parent = 0;
        std::size_t joint = 0; // of m_joints; meaningless at a root
        std::size_t depth = 0;
        std::size_t tree = 0; // bones of one tree reach one another
    };
    std::unordered_map<std::string, std::size_t> m_index;
    std::vector<Node> m_nodes;
    std::vector<StructureId> m_joints; // the tree joints
    std::optional<StructureId> m_cycle;
};

/// For each muscle: the tree path between each origin and each insertion of the same head (basis computed, grade of
/// the best head that shows it), plus what it states by Span (basis stated). Ends on soft tissue are ends there.
[[nodiscard]] std::vector<Crossing> computeCrossings(const Atlas &atlas);

} // namespace raphe
