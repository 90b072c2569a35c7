// Which unit squares of the front and the back view are marked. A plain value of 256 KB; no threads, nothing fails.
#pragma once

#include "core/anatomy/Outline.h"
#include "core/anatomy/Place.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace raphe {

/// A cell is one unit square of the view as it is shown: x is its left edge, -500 to 499, and y its upper edge, 0 to 999. Only
/// front and back have cells.
class SurfaceMask {
public:
    static constexpr int firstX = -500;
    static constexpr int lastX = 499;
    static constexpr int rows = 1000;

    [[nodiscard]] static constexpr bool shows(View view) { return view == View::Front || view == View::Back; }

    void mark(View view, int x, int y) { m_words[wordOf(view, x, y)] |= bitOf(x); }
    [[nodiscard]] bool isMarked(View view, int x, int y) const { return (m_words[wordOf(view, x, y)] & bitOf(x)) != 0; }
    /// All cells of a row from one to another; those beyond the view are left out, and none when `to` is before `from`.
    void markRun(View view, int y, int from, int to);
    /// Unmarks what the other does not mark.
    void keepOnly(const SurfaceMask &other);

    [[nodiscard]] int count(View view) const;
    [[nodiscard]] int countBoth(const SurfaceMask &other, View view) const;
    [[nodiscard]] int countEither(const SurfaceMask &other, View view) const;
    bool operator==(const SurfaceMask &) const = default;

private:
    static constexpr std::size_t wordsInRow = 16; // of 64 cells
    static constexpr std::size_t wordsInView = wordsInRow * rows;

    static constexpr std::size_t wordOf(View view, int x, int y)
    {
        return (view == View::Back ? wordsInView : 0) + static_cast<std::size_t>(y) * wordsInRow
            + static_cast<std::size_t>(x - firstX) / 64;
    }
    static constexpr std::uint64_t bitOf(int x) { return std::uint64_t{1} << (static_cast<unsigned>(x - firstX) % 64); }

    std::vector<std::uint64_t> m_words = std::vector<std::uint64_t>(2 * wordsInView);
};

} // namespace raphe
