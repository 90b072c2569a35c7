#include "app/paint/Marks.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

QPainterPath disc(double r)
{
    QPainterPath path;
    path.addEllipse(QPointF(0, 0), r, r);
    return path;
}

// An upright bar with a notch in each flank: something that does not glide.
QPainterPath notchedBar(double r)
{
    QPainterPath path;
    const double w = r * 0.86;
    path.moveTo(-w, -r);
    path.lineTo(w, -r);
    path.lineTo(w, -r * 0.3);
    path.lineTo(w * 0.72, 0);
    path.lineTo(w, r * 0.3);
    path.lineTo(w, r);
    path.lineTo(-w, r);
    path.lineTo(-w, r * 0.3);
    path.lineTo(-w * 0.72, 0);
    path.lineTo(-w, -r * 0.3);
    path.closeSubpath();
    return path;
}

// An open shield: flat above, pointed below.
QPainterPath shield(double r)
{
    QPainterPath path;
    path.moveTo(-r * 0.85, -r * 0.85);
    path.lineTo(r * 0.85, -r * 0.85);
    path.lineTo(r * 0.85, r * 0.1);
    path.lineTo(0, r);
    path.lineTo(-r * 0.85, r * 0.1);
    path.closeSubpath();
    return path;
}

void paintNumber(QPainter &painter, int number, const QColor &color, double size)
{
    if (number <= 0)
        return;
    painter.save();
    const double scale = size / 100; // large type scaled down keeps its shape at every zoom
    painter.scale(scale, scale);
    painter.setFont(typefaceInUnits(number > 9 ? 48 : 58, QFont::Bold));
    painter.setPen(color);
    painter.drawText(QRectF(-60, -60, 120, 118), Qt::AlignCenter, QString::number(number));
    painter.restore();
}

} // namespace

void paintMark(QPainter &painter, const Theme &theme, const MarkLook &look, QPointF centre, double size)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(centre);
    const double r = size / 2;
    const double hair = size * 0.07;
    const QPen halo(theme.ground, hair * 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    const auto filled = [&](const QPainterPath &path, const QColor &color) {
        painter.strokePath(path, halo);
        painter.fillPath(path, color);
    };
    QColor numberColor = theme.onMark;
    QColor ring = theme.ink;
    switch (look.kind) {
    case MarkKind::Tender:
        filled(disc(r), theme.tender);
        ring = theme.tender;
        break;
    case MarkKind::Restricted:
        filled(notchedBar(r * 0.95), theme.restricted);
        ring = theme.restricted;
        break;
    case MarkKind::TenderAndRestricted:
        filled(notchedBar(r * 1.12), theme.restricted);
        filled(disc(r * 0.74), theme.tender);
        ring = theme.restricted;
        break;
    case MarkKind::Noted:
        filled(disc(r * 0.9), theme.quiet);
        ring = theme.quiet;
        break;
    case MarkKind::Clear: {
        const QPainterPath path = shield(r);
        painter.strokePath(path, halo);
        painter.fillPath(path, theme.ground);
        painter.strokePath(path, QPen(theme.clear, hair * 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        if (look.number == 0) {
            QPainterPath tick;
            tick.moveTo(-r * 0.4, -r * 0.1);
            tick.lineTo(-r * 0.05, r * 0.3);
            tick.lineTo(r * 0.45, -r * 0.45);
            painter.strokePath(tick, QPen(theme.clear, hair * 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        }
        numberColor = theme.clear;
        ring = theme.clear;
        break;
    }
    case MarkKind::Unable: {
        painter.strokePath(disc(r * 0.9), halo);
        painter.fillPath(disc(r * 0.9), theme.ground);
        painter.strokePath(disc(r * 0.9), QPen(theme.quiet, hair * 1.4, Qt::DotLine, Qt::RoundCap));
        QPainterPath stroke;
        stroke.moveTo(-r * 0.62, r * 0.62);
        stroke.lineTo(r * 0.62, -r * 0.62);
        painter.strokePath(stroke, QPen(theme.quiet, hair * 1.2));
        numberColor = theme.ink;
        break;
    }
    }
    if (look.familiar)
        painter.strokePath(disc(r * 1.38), QPen(ring, hair * 1.3));
    if (look.selected)
        painter.strokePath(disc(r * 1.62), QPen(theme.accent, hair * 1.8));
    paintNumber(painter, look.number, numberColor, look.kind == MarkKind::TenderAndRestricted ? size * 0.88 : size);
    painter.restore();
}

std::vector<QPointF> spreadMarks(std::vector<QPointF> points, double distance)
{
    const std::vector<QPointF> home = points;
    for (int round = 0; round < 40; ++round) {
        bool moved = false;
        for (std::size_t i = 0; i < points.size(); ++i)
            for (std::size_t j = i + 1; j < points.size(); ++j) {
                QPointF apart = points[j] - points[i];
                const double length = std::hypot(apart.x(), apart.y());
                if (length >= distance * 0.999)
                    continue;
                if (length < 1e-6)
                    apart = QPointF(0, 1); // straight down, so that neither side gains
                else if (apart.y() * (home[j].y() - home[i].y()) < 0)
                    apart.setY(-apart.y()); // one was pushed past the other: back
                const QPointF push = apart / std::max(length, 1.0) * (distance - length) / 2;
                points[i] -= push;
                points[j] += push;
                moved = true;
            }
        for (std::size_t i = 0; i < points.size(); ++i) { // a mark never crosses to the other side, or leaves the midline
            if (home[i].x() == 0)
                points[i].setX(0);
            else if ((home[i].x() > 0) != (points[i].x() > 0))
                points[i].setX(home[i].x());
        }
        if (!moved)
            break;
    }
    return points;
}

} // namespace raphe
