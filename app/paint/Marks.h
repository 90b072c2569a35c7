// The signs that stand on the body, on screen and on paper. Each kind has its own shape:
// tender: disc; restricted: upright bar with notches; both: disc on a bar; noted: dot in a ring;
// clear: open shield with a tick; unable: broken ring with a stroke. Familiar pain: a second ring around.
#pragma once

#include "app/paint/Theme.h"

#include <QPointF>
#include <QRectF>

class QPainter;

namespace raphe {

struct MarkLook {
    MarkKind kind{};
    int grade = 0;
    bool familiar = false;
    int number = 0; // 0: none
    bool selected = false;
};

/// Paints a mark of about `size` painter units across, centred.
void paintMark(QPainter &painter, const Theme &theme, const MarkLook &look, QPointF centre, double size);

/// Moves marks that stand on one another apart, keeping their order and their side of x = 0 where they have one.
[[nodiscard]] std::vector<QPointF> spreadMarks(std::vector<QPointF> points, double distance);

} // namespace raphe
