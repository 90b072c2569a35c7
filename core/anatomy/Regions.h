// What the drawing says of one structure against another: the skin regions above it, how far two lie on one another, and which
// limb it belongs to. What is drawn nowhere stands where its parts are, else where its whole is. Keeps references to the atlas
// and the drawings, which must outlive it. Movable. Remembers what it found, so that asking again is cheap; references that it
// gives stay good as long as it lives; thread-safe.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/anatomy/Drawing.h"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// Part of the other by `part_of`, over any number of steps; nothing is part of itself.
[[nodiscard]] bool isPartOf(const Atlas &atlas, const StructureId &part, const StructureId &whole);

enum class Limb { Arm, Leg };
inline constexpr WordTable<Limb, 2> limbWords{{{Limb::Arm, "arm"}, {Limb::Leg, "leg"}}};

/// Surface regions and the limb that each belongs to.
using LimbRegions = std::map<StructureId, Limb>;

class Regions {
public:
    /// `json` is resources/body-shares.json, for the regions of the limbs: the arm is upper arm, forearm and hand; the leg is
    /// buttock, thigh, leg and foot. All regions of the insets of palm and sole belong to hand and foot.
    [[nodiscard]] static Result<Regions> read(
        std::string_view json, const std::string &file, const Atlas &atlas, const Body &body);
    Regions(Regions &&) noexcept;
    ~Regions();

    [[nodiscard]] const Atlas &atlas() const { return m_atlas; }
    [[nodiscard]] const Body &body() const { return m_body; }

    /// Surface region -> share (0 to 1) of the structure's shape that lies under it (regionsOver of ShapeShares.h). A surface
    /// region lies under itself. Empty when nothing is drawn.
    [[nodiscard]] const std::map<StructureId, double> &over(const StructureId &id) const;
    /// The surface region in which the structure's mark stands.
    [[nodiscard]] const std::optional<StructureId> &atMark(const StructureId &id) const;
    /// The share (0 to 1) of the structure's shape that lies on or under the other (shareOn of ShapeShares.h).
    [[nodiscard]] double shareOn(const StructureId &id, const StructureId &other) const;
    /// The same of the smaller of the two on the other.
    [[nodiscard]] double overlap(const StructureId &a, const StructureId &b) const;
    /// The limb whose regions lie over at least `least` of the structure, or over its mark; nothing on trunk and head. What is
    /// hidden belongs where one of its neighbours does: what it lies beside, or what it is fixed to. `roots`: regions of the
    /// trunk that count to a limb as well.
    [[nodiscard]] std::optional<Limb> limbOf(const StructureId &id, double least, const LimbRegions &roots = {}) const;

private:
    struct Found;

    Regions(const Atlas &atlas, const Body &body);
    // What `found` holds for this key; when it is not there yet, `find` tells.
    template <class Key, class Value, class Find>
    const Value &remembered(std::map<Key, Value> &found, const Key &key, Find find) const;
    [[nodiscard]] const std::vector<StructureId> &drawn(const StructureId &id) const;

    const Atlas &m_atlas;
    const Body &m_body;
    LimbRegions m_limbs;
    std::unique_ptr<Found> m_found;
};

/// From the body shares that are built into the program (resources/body-shares.json).
[[nodiscard]] Result<Regions> readEmbeddedRegions(const Atlas &atlas, const Body &body);

} // namespace raphe
