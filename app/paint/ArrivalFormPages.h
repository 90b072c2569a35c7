// The form before arrival on paper: 12 pt or larger, room to write by hand, front and back of the body to draw on.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/paint/Paper.h"
#include "core/document/ArrivalForm.h"

namespace raphe {

/// The two bodies must outlive the pages.
[[nodiscard]] PrintedPages arrivalFormPages(Paper paper, const ArrivalForm &form, const BodyArt &front, const BodyArt &back);

} // namespace raphe
