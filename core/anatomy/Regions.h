// What the drawing says of one structure against another: the skin regions above it, how far two lie on one another, and
// which limb it belongs to. Plain functions of atlas and drawings, and Limbs, which is immutable after reading; thread-safe.
// What is drawn nowhere stands where its parts are, else where its whole is.
#pragma once

#include "core/anatomy/Drawing.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// Part of the other by `part_of`, over any number of steps; nothing is part of itself.
[[nodiscard]] bool isPartOf(const Atlas &atlas, const StructureId &part, const StructureId &whole);

/// Surface region -> share (0 to 1) of the structure's shape that lies under it: in the back view, or the front where that shows
/// clearly more, else in the other view that shows most; and in the insets of palm and sole, where these show it too. A surface
/// region lies under itself. Empty when nothing is drawn.
[[nodiscard]] std::map<StructureId, double> regionsOver(const Atlas &atlas, const Body &body, const StructureId &id);

/// The surface region in which the structure's mark stands.
[[nodiscard]] std::optional<StructureId> regionAtMark(const Atlas &atlas, const Body &body, const StructureId &id);

/// The greatest share (0 to 1), over the views, of the smaller of the two that lies on or under the other. Side and head, which
/// look through the whole width of the body, count only for what front and back do not show.
[[nodiscard]] double overlapOf(const Atlas &atlas, const Body &body, const StructureId &a, const StructureId &b);

enum class Limb { Arm, Leg };

/// Which surface regions belong to which limb, from the parts of resources/body-shares.json: the arm is upper arm, forearm and
/// hand; the leg is buttock, thigh, leg and foot. All regions of the insets of palm and sole belong to hand and foot.
class Limbs {
public:
    [[nodiscard]] static Result<Limbs> read(std::string_view json, const std::string &file, const Atlas &atlas, const Body &body);
    /// The limb whose regions lie over at least `least` of the structure, or over its mark; nothing on trunk and head. What is
    /// hidden belongs where one of its neighbours does: what it lies beside, or what it is fixed to.
    [[nodiscard]] std::optional<Limb> limbOf(const Atlas &atlas, const Body &body, const StructureId &id, double least) const;

private:
    [[nodiscard]] std::optional<Limb> limbOf(const StructureId &region) const;

    std::map<StructureId, Limb> m_regions;
};

[[nodiscard]] Result<Limbs> readEmbeddedLimbs(const Atlas &atlas, const Body &body);

} // namespace raphe
