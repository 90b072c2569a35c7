// From which positions hands reach a place, and what is uncovered for it: content of resources/access.json, by the regions of
// skin over the place. Keeps a reference to the regions, which must outlive it. Immutable after reading; thread-safe.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/base/Result.h"
#include "core/plan/PlanProblem.h"
#include "core/reasoning/Position.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// A part of the body that is uncovered as one; one side of it when the other stays covered.
struct Cover {
    std::string id;
    std::string name; // in the trade's words, lower case
    bool isBySide = false;
};

[[nodiscard]] constexpr plan::PositionSet setOf(Position position)
{
    return static_cast<plan::PositionSet>(1U << static_cast<unsigned>(position));
}

class Access {
public:
    /// Every surface region of the atlas stands there once; unknown fields, words and ids are errors with file and JSON pointer.
    [[nodiscard]] static Result<Access> read(std::string_view text, const std::string &file, const Regions &regions);

    /// None when no view draws the place: hands cannot reach it.
    [[nodiscard]] plan::PositionSet positionsOf(const Place &place) const;
    /// What is uncovered in that position: an index of covers() + 1; 0: nothing needs to be.
    [[nodiscard]] int coverOf(const Place &place, Position position) const;
    /// The part of the body in which it lies, an index of covers() + 1; 0: of head or hand.
    [[nodiscard]] int areaOf(const Place &place) const;
    [[nodiscard]] const std::vector<Cover> &covers() const { return m_covers; }

private:
    struct Region {
        plan::PositionSet always = 0;
        bool isUp = false; // reached when this side is up, lying on the other
        bool isDown = false; // reached when this side is down: what faces the other limb
        int cover = 0;
    };

    explicit Access(const Regions &regions) : m_regions(regions) { }
    [[nodiscard]] static plan::PositionSet positionsIn(const Region &region, Side side);
    // The regions over a place with their share of it; its mark's region when none is over it.
    [[nodiscard]] std::vector<std::pair<const Region *, double>> over(const Place &place) const;

    const Regions &m_regions;
    std::vector<Cover> m_covers;
    std::map<StructureId, Region> m_byRegion;
};

/// Built into the program (resources/access.json).
[[nodiscard]] Result<Access> readEmbeddedAccess(const Regions &regions);

} // namespace raphe
