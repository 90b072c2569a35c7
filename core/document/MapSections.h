// The sections of the visit map, each composed by itself; one without words is left out by visitMap. Nothing fails.
#pragma once

#include "core/document/VisitMap.h"

namespace raphe {

/// The number that a place has on the map; 0: it was not found. A spot that is not the same will do where no other is.
[[nodiscard]] int numberOf(const Visit &visit, const Place &place, std::optional<Spot> spot = {});

[[nodiscard]] MapSection whatWeDid(const MapSource &source, const Visit &visit, const Phrases &phrases);
/// What was examined again, beside what it was before; better or worse only beyond the published error.
[[nodiscard]] MapSection whatChanged(const MapSource &source, const Visit &visit, const Phrases &phrases);
[[nodiscard]] MapSection whatToDoAtHome(const MapSource &source, const Visit &visit, const Phrases &phrases);
[[nodiscard]] MapSection whatToExpect(const MapSource &source, const Visit &visit, const Phrases &phrases);
/// Always there.
[[nodiscard]] MapSection whenToCall(const MapSource &source, const Phrases &phrases);

} // namespace raphe
