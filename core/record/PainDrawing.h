// The patient's pain drawing: patches painted on the views of the body, each with what it feels like and how much it hurts.
// Plain values. The JSON form is in PainDrawingJson.h; how much of the body is painted, in PainMask.h.
#pragma once

#include "core/anatomy/BrushStroke.h"
#include "core/anatomy/Place.h"
#include "core/record/PainScore.h"

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace raphe {

/// Plain words for what a pain feels like; our choice, and `other` for the rest.
enum class PainQuality { Aching, Burning, Shooting, Stabbing, Tingling, Numb, Stiff, Throbbing, Pressing, Other };
inline constexpr WordTable<PainQuality, 10> painQualityWords{{{PainQuality::Aching, "aching"}, {PainQuality::Burning, "burning"},
    {PainQuality::Shooting, "shooting"}, {PainQuality::Stabbing, "stabbing"}, {PainQuality::Tingling, "tingling"},
    {PainQuality::Numb, "numb"}, {PainQuality::Stiff, "stiff"}, {PainQuality::Throbbing, "throbbing"},
    {PainQuality::Pressing, "pressing"}, {PainQuality::Other, "other"}}};

enum class Painter { Patient, Practitioner };
inline constexpr WordTable<Painter, 2> painterWords{{{Painter::Patient, "patient"}, {Painter::Practitioner, "practitioner"}}};

/// What was painted as one, on one view.
struct PainPatch {
    View view{};
    Side facing = Side::Midline; // side and head: which side of the patient is seen; the others: midline
    std::vector<BrushStroke> strokes;
    std::optional<PainQuality> quality; // nothing until it was said
    std::optional<PainScore> intensity; // nothing until it was said
    Painter painter{};
    bool confirmed = false; // the practitioner has said the place in words, and the patient agreed
    bool operator==(const PainPatch &) const = default;
};

/// What a drawing may hold; our choice: 20,000 points are some three minutes of a pen that reports 120 a second. A dot of the
/// least radius always reaches the middle of a unit square.
struct PainLimits {
    static constexpr std::size_t patches = 100;
    static constexpr std::size_t strokes = 500; // of a patch
    static constexpr std::size_t points = 5000; // of a stroke
    static constexpr std::size_t pointsOfAll = 20000;
    static constexpr double leastRadius = 1; // units: about 1.7 mm
    static constexpr double greatestRadius = 100; // units: about 17 cm
};

/// Left becomes right: x changes its sign, and a side view shows the other side. Twice gives the patch back.
[[nodiscard]] inline PainPatch mirrored(PainPatch patch)
{
    patch.facing = mirrored(patch.facing);
    for (BrushStroke &stroke : patch.strokes)
        stroke = mirrored(std::move(stroke));
    return patch;
}

} // namespace raphe
