// One movement measured or watched, as a plain value. Degrees or millimetres, as the movement has it
// (resources/examination/movements.json, which core/examination knows).
#pragma once

#include "core/anatomy/Place.h"

#include <optional>
#include <string>

namespace raphe {

/// Who moves: the patient alone, or the examiner's hand. The two are never compared with each other.
enum class MoveMode { Active, Passive };
inline constexpr WordTable<MoveMode, 2> moveModeWords{{{MoveMode::Active, "active"}, {MoveMode::Passive, "passive"}}};

/// What it was measured with. Values of two devices are not compared either (goniometer and
/// inclinometer need not agree).
enum class Device { Goniometer, Inclinometer, Compass, Phone, Tape, Ruler, Eye };
inline constexpr WordTable<Device, 7> deviceWords{
    {{Device::Goniometer, "goniometer"}, {Device::Inclinometer, "inclinometer"}, {Device::Compass, "compass"},
        {Device::Phone, "phone"}, {Device::Tape, "tape"}, {Device::Ruler, "ruler"}, {Device::Eye, "eye"}}};

struct Measure {
    /// The furthest value that a file may hold, either way; what a movement can reach is known to core/examination.
    static constexpr double furthest = 1000;

    std::string movement; // id
    Side side{}; // midline: the movement has no sides
    std::optional<double> value; // nothing: watched, not measured
    std::optional<MoveMode> mode;
    std::optional<Device> device;
    std::optional<double> painFrom; // where pain starts, in the same unit
    bool hurts = false; // it brings pain; where was not measured
    bool familiar = false; // the pain is the patient's own
    std::string note;

    [[nodiscard]] bool bringsPain() const { return hurts || familiar || painFrom.has_value(); }
    bool operator==(const Measure &) const = default;
};

/// What was said before of a movement with what is said now: what is new takes the place of what it concerns, the rest stays.
[[nodiscard]] Measure saidBeside(Measure before, const Measure &now);

} // namespace raphe
