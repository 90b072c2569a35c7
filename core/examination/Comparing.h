// What a measured movement is held against: the usual range of people of that age and sex, and the other side. Like with like
// only: active with active, one device with itself. Plain functions; nothing fails.
#pragma once

#include "core/examination/Movement.h"
#include "core/outcome/ReadingChange.h"

#include <optional>
#include <vector>

namespace raphe {

/// Whom the reference values must be of.
struct Reference {
    std::optional<Sex> sex;
    std::optional<int> age; // whole years on the day of the visit
};

/// Why a measure is held against no usual range.
enum class NoNorm { NotMeasured, ModeUnknown, DeviceUnknown, AgeUnknown, SexUnknown, NonePublished };

struct NormComparison {
    const Norm *norm = nullptr; // of the movement, which must outlive it; nullptr: see why
    NoNorm why{};
    double difference = 0; // from the mean, in the unit of the movement
    std::optional<double> z; // in standard deviations, where the source gives one
    const Norm *other = nullptr; // of another source that fits as well
};

/// The narrowest band of age that fits, one of the patient's sex before one of both, one with an SD before one without; and the
/// next source after it, as two samples seldom agree.
[[nodiscard]] NormComparison comparedWithNorm(const Movement &movement, const Measure &measure, const Reference &reference);

/// The published error of reading this movement in this way, the greatest of several. nullptr: unknown.
[[nodiscard]] const ReadingError *errorOf(const Movement &movement, std::optional<MoveMode> mode, std::optional<Device> device);

/// The device that was chosen, where it can measure the movement; 'by eye' can be anything.
[[nodiscard]] std::optional<Device> deviceFor(const Movement &movement, std::optional<Device> chosen);

/// Right against left.
struct SideComparison {
    double difference = 0; // right minus left
    Beyond beyond{};
    const ReadingError *error = nullptr; // of the movement, which must outlive it
};

/// Nothing when one side was not measured, or the two in different ways.
[[nodiscard]] std::optional<SideComparison> comparedSides(
    const Movement &movement, const std::vector<Measure> &measures, std::optional<MoveMode> mode);

} // namespace raphe
