// Places in plain words for the patient, with the side first and in capitals: 'LEFT shoulder cap'. Plain functions; any thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/record/PaintedPlaces.h"

#include <QString>

#include <vector>

namespace raphe {

[[nodiscard]] QString plainWords(const Atlas &atlas, const Place &place);
/// One after the other; 'beside the body' when there is none.
[[nodiscard]] QString plainWords(const Atlas &atlas, const std::vector<PaintedPlace> &places);

} // namespace raphe
