// How far two pain drawings cover each other, and whether that is more than drawing the same pain again would differ. Plain
// functions of plain values; nothing fails, any thread.
#pragma once

#include "core/anatomy/SurfaceMask.h"
#include "core/base/Words.h"

#include <optional>
#include <string>

namespace raphe {

/// 29 patients with low back and 23 with neck pain drew twice, one minute apart: the two drawings overlapped by a Jaccard index
/// of 0.62 on average, standard deviation 0.18. From the congress report of what became Barbero et al. 2015 (European Journal of
/// Pain 19:1129), read in a secondhand summary (tests/published/pain-drawing.json).
struct RedrawingError {
    static constexpr double mean = 0.62;
    static constexpr double standardDeviation = 0.18;
    /// One redrawing in twenty falls below the mean by more than this many deviations, if they are spread normally.
    static constexpr double deviations = 1.645;
    /// mean - deviations * standardDeviation, to two decimals.
    static constexpr double leastJaccard = 0.32;
};

enum class OverlapVerdict { MayHaveMoved, WithinRedrawingError };
inline constexpr WordTable<OverlapVerdict, 2> overlapVerdictWords{
    {{OverlapVerdict::MayHaveMoved, "may-have-moved"}, {OverlapVerdict::WithinRedrawingError, "within-redrawing-error"}}};

/// Jaccard indices, 0 (apart) to 1 (the same): cells that both drawings mark, of those that either marks. Nothing where one of
/// the two marks no cell.
struct DrawingOverlap {
    std::optional<double> front;
    std::optional<double> back;
    std::optional<double> both; // cells of front and back together
    bool operator==(const DrawingOverlap &) const = default;

    /// Of `both`; nothing where there is no number.
    [[nodiscard]] std::optional<OverlapVerdict> verdict() const;
};

[[nodiscard]] DrawingOverlap overlapOf(const SurfaceMask &now, const SurfaceMask &before);

/// The verdict in words, with what it rests on and how far that carries (translated).
[[nodiscard]] std::string inWords(const DrawingOverlap &overlap);

} // namespace raphe
