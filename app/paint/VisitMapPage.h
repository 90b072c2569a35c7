// The visit map as one page: PDF (A4 or Letter), SVG or PNG. The same painting for all three.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/paint/Paper.h"
#include "core/document/VisitMap.h"

#include <string>

namespace raphe {

/// Paints the page into `page`, whose units are millimetres.
void paintVisitMap(QPainter &painter, const QRectF &page, const VisitMap &map, const BodyArt &front, const BodyArt &back);

/// Format by the ending of the name: .pdf, .svg or .png (150 dpi). Written beside and moved into place, so that a full
/// disk leaves an older file as it was.
[[nodiscard]] Result<Done> writeVisitMap(
    const std::string &file, Paper paper, const VisitMap &map, const BodyArt &front, const BodyArt &back);

} // namespace raphe
