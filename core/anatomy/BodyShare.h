// How much of the body's surface is marked, in percent: share of each part's drawn cells, times the part's published share
// (Lund and Browder, adult), front and back counted each for itself. Only front and back count; a whole part and the whole
// body come out exactly, and a mirrored mask has the mirrored answer to the last bit. Immutable after reading, thread-safe.
#pragma once

#include "core/anatomy/Drawing.h"
#include "core/anatomy/SurfaceMask.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// A part of the body on one side, seen in one view.
struct BodyPart {
    std::string id; // 'upper-arm'
    Side side{}; // midline for parts that are not counted by side
    View view{}; // front or back
    double percent = 0; // of the body's surface
    int cells = 0; // drawn
};

/// How much of the body's surface is marked within a region of the skin.
struct RegionShare {
    Place region; // a region of the middle stands as a whole
    double percent = 0; // of the body's surface
    double of = 0; // what the whole region takes, front and back together
};

class BodyShare {
public:
    /// Reads resources/body-shares.json and counts the cells of the silhouettes, each by the region that is drawn there.
    [[nodiscard]] static Result<BodyShare> read(
        std::string_view json, const std::string &file, const Atlas &atlas, const Body &body);

    [[nodiscard]] const std::vector<BodyPart> &parts() const { return m_parts; }
    /// Of each part in the order of parts(): percent of the whole body that is marked there.
    [[nodiscard]] std::vector<double> percentByPart(const SurfaceMask &mask) const;
    [[nodiscard]] double percentOf(const SurfaceMask &mask) const;
    /// The regions with at least one marked cell, by id; of a pair the left one first.
    [[nodiscard]] std::vector<RegionShare> percentByRegion(const SurfaceMask &mask) const;
    /// Marks the cells of a surface region on one side, in front and back; others and places not drawn there mark nothing.
    void markRegion(SurfaceMask &mask, const Place &region) const;

private:
    struct Cell {
        std::int16_t x;
        std::int16_t y;
        std::uint16_t slot;
    };
    // Where a region and a part of the body meet, on one side of the middle.
    struct Slot {
        StructureId region;
        Side half{}; // left or right
        std::size_t part = 0; // of m_parts
        int cells = 0;
        bool paired = false; // the region
    };
    [[nodiscard]] std::vector<int> markedBySlot(const SurfaceMask &mask) const;

    std::vector<BodyPart> m_parts; // a part of the right is followed by the same of the left, or the other way round
    std::vector<Slot> m_slots; // the same
    std::vector<Cell> m_cells; // of all slots
};

/// The shares that are built into the program.
[[nodiscard]] Result<BodyShare> readEmbeddedBodyShare(const Atlas &atlas, const Body &body);

} // namespace raphe
