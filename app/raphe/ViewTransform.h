// Where a point of the body stands in a view's widget, and the other way round: fit, zoom, pan, and the turn for work from the
// head end. Plain values. It never mirrors.
#pragma once

#include "core/anatomy/Outline.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QTransform>

#include <algorithm>

namespace raphe {

struct ViewTransform {
    static constexpr double marginPixels = 14;

    QSizeF widget;
    QRectF frame; // what fits into the widget at zoom 1, in body units
    double zoom = 1;
    QPointF pan{0, 0}; // pixels from the resting place
    bool upsideDown = false;

    /// Pixels in one unit of the body.
    [[nodiscard]] double scale() const
    {
        const double fit = std::min((widget.width() - 2 * marginPixels) / std::max(frame.width(), 1.0),
            (widget.height() - 2 * marginPixels) / std::max(frame.height(), 1.0));
        return std::max(fit, 0.05) * zoom;
    }
    [[nodiscard]] QPointF toWidget(Point p) const
    {
        const QPointF d = (QPointF(p.x, p.y) - frame.center()) * (upsideDown ? -scale() : scale());
        return QPointF(widget.width() / 2, widget.height() / 2) + d + pan;
    }
    [[nodiscard]] Point toBody(QPointF p) const
    {
        const QPointF d =
            (p - pan - QPointF(widget.width() / 2, widget.height() / 2)) / (upsideDown ? -scale() : scale()) + frame.center();
        return {d.x(), d.y()};
    }
    /// Body units to pixels.
    [[nodiscard]] QTransform matrix() const
    {
        const QPointF zero = toWidget({0, 0});
        const double s = upsideDown ? -scale() : scale();
        return {s, 0, 0, s, zero.x(), zero.y()};
    }
};

} // namespace raphe
