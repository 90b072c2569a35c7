// The visit map on paper: one page, in smaller type where there is much to say, and more pages before anything would be left out.
// The same painting for PDF, SVG, PNG, printer and preview.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/paint/Paper.h"
#include "core/document/VisitMap.h"

namespace raphe {

struct MapPrint {
    Paper paper{};
    bool isLarge = false; // 16 points, on as many pages as it takes
    bool isGrey = false;
};

/// The two bodies must outlive the pages.
[[nodiscard]] PrintedPages visitMapPages(const MapPrint &print, const VisitMap &map, const BodyArt &front, const BodyArt &back);

} // namespace raphe
