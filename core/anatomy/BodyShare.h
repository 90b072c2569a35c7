// How much of the body's surface is marked, in percent: share of each part's drawn cells, times the part's published share
// (Lund and Browder, adult), front and back counted each for itself. Only front and back count; a whole part and the whole
// body come out exactly. Immutable after reading, thread-safe.
#pragma once

#include "core/anatomy/Drawing.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// Which cells of front and back are marked. A cell is one unit square; x runs from -500 to 499 as the view shows it.
class SurfaceMask {
public:
    void mark(View view, int x, int y) { m_cells[index(view, x, y)] = true; }
    [[nodiscard]] bool isMarked(View view, int x, int y) const { return m_cells[index(view, x, y)]; }

private:
    static std::size_t index(View view, int x, int y)
    {
        return (view == View::Back ? 1000000U : 0U) + static_cast<std::size_t>(y) * 1000U + static_cast<std::size_t>(x + 500);
    }
    std::vector<bool> m_cells = std::vector<bool>(2000000);
};

/// A part of the body on one side, seen in one view.
struct BodyPart {
    std::string id; // 'upper-arm'
    Side side{}; // midline for parts that are not counted by side
    View view{}; // front or back
    double percent = 0; // of the body's surface
    int cells = 0; // drawn
};

class BodyShare {
public:
    /// Reads resources/body-shares.json and counts the drawn cells.
    [[nodiscard]] static Result<BodyShare> read(
        std::string_view json, const std::string &file, const Atlas &atlas, const Body &body);

    [[nodiscard]] const std::vector<BodyPart> &parts() const { return m_parts; }
    /// Of each part in the order of parts(): percent of the whole body that is marked there.
    [[nodiscard]] std::vector<double> percentByPart(const SurfaceMask &mask) const;
    [[nodiscard]] double percentOf(const SurfaceMask &mask) const;
    /// Marks the cells of a surface region on one side, in front and back; others and places not drawn there mark nothing.
    void markRegion(SurfaceMask &mask, const Place &region) const;

private:
    struct Cell {
        std::int16_t x;
        std::int16_t y;
        std::uint16_t part; // of m_parts
        std::uint16_t region; // of m_regions
    };
    std::vector<BodyPart> m_parts;
    std::vector<StructureId> m_regions;
    std::vector<Cell> m_cells; // of all parts
};

/// The shares that are built into the program.
[[nodiscard]] Result<BodyShare> readEmbeddedBodyShare(const Atlas &atlas, const Body &body);

} // namespace raphe
