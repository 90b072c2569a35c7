// How the patient lies while hands are at a place, so that checks in one position come together. No state; thread-safe.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/anatomy/Drawing.h"
#include "core/record/PatientPosition.h"

#include <optional>

namespace raphe {

/// From the view that shows most of the structure: seen from behind and on the sole, prone; from the front, at the palm and at
/// the head, supine; from the side only, that side up. Common practice, no source. Nothing when no view draws it: hands
/// cannot reach it.
[[nodiscard]] std::optional<Position> positionFor(const Body &body, const Place &place);
/// 'lying on the left side, right side up'.
[[nodiscard]] std::string positionInWords(Position position);

} // namespace raphe
