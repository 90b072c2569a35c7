// The figures of the visit map: front and back, before and now, with numbered marks, and the key to the marks. Units are
// millimetres.
#pragma once

#include "app/paint/BodyArt.h"
#include "core/document/VisitMap.h"

namespace raphe {

/// One figure: a view, with the marks of before or of now. Its caption stands above it.
struct MapFigure {
    const BodyArt *art = nullptr;
    const std::vector<MapMark> *marks = nullptr;
    QString caption;
};

/// Front and back as found; where something was felt again, each view that shows such a place before and now.
[[nodiscard]] std::vector<MapFigure> mapFigures(const VisitMap &map, const BodyArt &front, const BodyArt &back);

void paintMapFigures(
    QPainter &painter, const Theme &theme, const VisitMap &map, const std::vector<MapFigure> &figures, const QRectF &box);

/// One sample of each mark that the map uses, in rows. Returns its height; without a painter it only measures.
double paintMapKey(QPainter *painter, const Theme &theme, const VisitMap &map, const QRectF &box, double points);

} // namespace raphe
