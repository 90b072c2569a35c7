#include "app/paint/PainPatchArt.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr double edge = 1.4; // pixels; of the current patch, one line of ink over a wider one of ground
constexpr double currentEdge = 4.2;
constexpr double currentInk = 2.4;
constexpr double plateWidth = 26;
constexpr double plateHeight = 22;
constexpr double plateGap = 2; // between plate and patch
constexpr double drawnSize = 24; // edge of the square in which the patterns below are drawn
constexpr qsizetype longestRun = 24; // points
constexpr float tint = 0.26F;

// Lines run out of the square where they come in on the other side, so that squares join.
void drawPattern(QPainter &p, PainQuality quality, const QColor &ink)
{
    const auto line = [&](double width) {
        p.setPen(QPen(ink, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        p.setBrush(Qt::NoBrush);
    };
    const auto solid = [&] {
        p.setPen(Qt::NoPen);
        p.setBrush(ink);
    };
    const auto shape = [&](std::initializer_list<QPointF> points) {
        p.drawPolygon(points.begin(), static_cast<int>(points.size()));
    };
    switch (quality) {
    case PainQuality::Aching: // long low waves
        line(2.2);
        for (const double y : {6.0, 18.0}) {
            QPainterPath wave({-12, y});
            for (double x = -12; x < 36; x += 24) {
                wave.cubicTo({x + 4, y - 5}, {x + 8, y - 5}, {x + 12, y});
                wave.cubicTo({x + 16, y + 5}, {x + 20, y + 5}, {x + 24, y});
            }
            p.drawPath(wave);
        }
        break;
    case PainQuality::Burning: // tongues of fire
        solid();
        for (const QPointF foot : {QPointF(6, 11), QPointF(18, 23)}) {
            QPainterPath tongue(foot - QPointF(0, 10));
            tongue.cubicTo(foot + QPointF(1, -6), foot + QPointF(4.5, -5), foot + QPointF(3.5, -1.5));
            tongue.cubicTo(foot + QPointF(3, 0.6), foot + QPointF(-3, 0.6), foot + QPointF(-3.5, -1.5));
            tongue.cubicTo(foot + QPointF(-4, -4), foot + QPointF(-1, -5), foot - QPointF(0, 10));
            p.drawPath(tongue);
        }
        break;
    case PainQuality::Shooting: // jagged lines, downwards
        line(2.2);
        for (const double x : {3.0, 15.0}) {
            QPainterPath bolt({x, -2});
            for (double y = -2; y < 26; y += 12) {
                bolt.lineTo(x + 6, y + 8);
                bolt.lineTo(x, y + 12);
            }
            p.drawPath(bolt);
        }
        break;
    case PainQuality::Stabbing: // long spikes, across
        solid();
        shape({{1, 2}, {1, 9}, {23, 5.5}});
        shape({{23, 14}, {23, 21}, {1, 17.5}});
        break;
    case PainQuality::Tingling: // a fine grain
        solid();
        for (int row = 0; row < 4; ++row)
            for (int column = 0; column < 4; ++column)
                p.drawEllipse(QPointF(column * 6 + (row % 2 ? 4.5 : 1.5), row * 6 + 3), 1.3, 1.3);
        break;
    case PainQuality::Numb: // hollow tiles
        line(1.8);
        for (const QPointF at : {QPointF(2, 3), QPointF(14, 15)})
            p.drawRect(QRectF(at, QSizeF(8, 6)));
        break;
    case PainQuality::Stiff: // thick bars, upright
        solid();
        p.drawRect(QRectF(2, 0, 4, 24));
        p.drawRect(QRectF(14, 0, 4, 24));
        break;
    case PainQuality::Throbbing: // rings around a core
        solid();
        p.drawEllipse(QPointF(12, 12), 2.6, 2.6);
        line(1.6);
        p.drawEllipse(QPointF(12, 12), 6, 6);
        p.drawEllipse(QPointF(12, 12), 10, 10);
        break;
    case PainQuality::Pressing: // a mesh
        line(1.8);
        for (const double at : {4.0, 12.0, 20.0}) {
            p.drawLine(QPointF(at, 0), QPointF(at, 24));
            p.drawLine(QPointF(0, at), QPointF(24, at));
        }
        break;
    case PainQuality::Other: // herringbone
        line(1.8);
        for (double y = -12; y < 36; y += 12) {
            p.drawLine(QPointF(0, y), QPointF(12, y + 8));
            p.drawLine(QPointF(12, y + 8), QPointF(24, y));
        }
        break;
    }
}

// Every stroke as one line with round ends. Pieces that cannot reach the rectangle are left out; `wider` by as many units.
void drawStrokes(QPainter &p, const std::vector<BrushStroke> &strokes, const QColor &color, double wider, const QRectF &units)
{
    for (const BrushStroke &stroke : strokes) {
        const double radius = stroke.radius + wider;
        if (stroke.points.size() == 1) {
            p.setPen(Qt::NoPen);
            p.setBrush(color);
            p.drawEllipse(QPointF(stroke.points[0].x, stroke.points[0].y), radius, radius);
            continue;
        }
        p.setPen(QPen(color, 2 * radius, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        const QRectF reach = units.adjusted(-radius, -radius, radius, radius);
        QPolygonF run;
        const auto draw = [&] {
            if (run.size() > 1)
                p.drawPolyline(run);
            run.clear();
        };
        for (std::size_t i = 1; i < stroke.points.size(); ++i) {
            const QPointF a(stroke.points[i - 1].x, stroke.points[i - 1].y);
            const QPointF b(stroke.points[i].x, stroke.points[i].y);
            if (std::max(a.x(), b.x()) < reach.left() || std::min(a.x(), b.x()) > reach.right()
                || std::max(a.y(), b.y()) < reach.top() || std::min(a.y(), b.y()) > reach.bottom()) {
                draw();
                continue;
            }
            if (run.isEmpty())
                run << a;
            run << b;
            if (run.size()
                == longestRun) { // many short lines are painted far faster than one that crosses itself a thousand times
                draw();
                run << b;
            }
        }
        draw();
    }
}

} // namespace

QImage painPattern(const Theme &theme, std::optional<PainQuality> quality, double ratio)
{
    const int side = std::max(1, static_cast<int>(std::lround(painPatternSize * ratio)));
    QImage tile(side, side, QImage::Format_ARGB32_Premultiplied);
    QColor ground = theme.tender;
    ground.setAlphaF(tint);
    tile.fill(ground);
    QPainter painter(&tile);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(side / drawnSize, side / drawnSize);
    if (quality)
        drawPattern(painter, *quality, theme.tender);
    return tile;
}

QRectF painPatchBounds(const std::vector<BrushStroke> &strokes, const QTransform &toPixels)
{
    QRectF box;
    for (const BrushStroke &stroke : strokes)
        for (const Point &p : stroke.points)
            box |= QRectF(p.x - stroke.radius, p.y - stroke.radius, 2 * stroke.radius, 2 * stroke.radius);
    constexpr double around = currentEdge + 1;
    return box.isEmpty() ? box : toPixels.mapRect(box).adjusted(-around, -around, around, around);
}

// Two pictures the size of what is seen: the fill, painted once however often the strokes cross, and the edge, which is a wider
// stroke with the inside cut out. They lie on whole pixels of the screen, and the pattern starts at the painter's origin, so that
// a part that is painted anew joins the rest.
void paintPainPatch(
    QPainter &painter, const Theme &theme, const PainPatch &patch, bool isCurrent, const QTransform &toPixels, const QRectF &seen)
{
    const QRectF box = painPatchBounds(patch.strokes, toPixels) & seen;
    if (box.isEmpty())
        return;
    const double ratio = painter.device()->devicePixelRatioF();
    const QRect pixels = QRectF(box.topLeft() * ratio, box.size() * ratio).toAlignedRect();
    const double unit = 1 / toPixels.m11();
    const QRectF units = toPixels.inverted().mapRect(QRectF(QPointF(pixels.topLeft()) / ratio, QSizeF(pixels.size()) / ratio));
    const QTransform toImage =
        toPixels * QTransform::fromScale(ratio, ratio) * QTransform::fromTranslate(-pixels.x(), -pixels.y());
    const auto picture = [&](auto paint) {
        QImage image(pixels.size(), QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::transparent);
        QPainter p(&image);
        p.setRenderHint(QPainter::Antialiasing);
        p.setTransform(toImage);
        paint(p);
        p.end();
        image.setDevicePixelRatio(ratio);
        painter.drawImage(QPointF(pixels.topLeft()) / ratio, image);
    };
    picture([&](QPainter &p) {
        drawStrokes(p, patch.strokes, theme.tender, 0, units);
        p.resetTransform();
        p.setCompositionMode(QPainter::CompositionMode_SourceIn);
        p.setBrushOrigin(-pixels.topLeft());
        p.fillRect(QRect(QPoint(0, 0), pixels.size()), QBrush(painPattern(theme, patch.quality, ratio)));
    });
    picture([&](QPainter &p) {
        if (isCurrent) {
            drawStrokes(p, patch.strokes, theme.panel, currentEdge * unit, units);
            drawStrokes(p, patch.strokes, theme.ink, currentInk * unit, units);
        } else {
            drawStrokes(p, patch.strokes, theme.tender, edge * unit, units);
        }
        p.setCompositionMode(QPainter::CompositionMode_DestinationOut);
        drawStrokes(p, patch.strokes, Qt::black, 0, units);
    });
}

QRectF painPlate(const PainPatch &patch, const QTransform &toPixels, const QRectF &room)
{
    QPointF top;
    double highest = 0;
    bool found = false;
    for (const BrushStroke &stroke : patch.strokes)
        for (const Point &p : stroke.points)
            if (!found || p.y - stroke.radius < highest) {
                found = true;
                highest = p.y - stroke.radius;
                top = QPointF(p.x, highest);
            }
    if (!found)
        return {};
    const QPointF at = toPixels.map(top) - QPointF(plateWidth / 2, plateHeight + plateGap + currentEdge / 2);
    return {std::clamp(at.x(), room.left(), std::max(room.left(), room.right() - plateWidth)),
        std::clamp(at.y(), room.top(), std::max(room.top(), room.bottom() - plateHeight)), plateWidth, plateHeight};
}

void paintPainPlate(QPainter &painter, const Theme &theme, PainScore intensity, bool isCurrent, const QRectF &plate)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(isCurrent ? theme.ink : theme.panel, isCurrent ? 2.4 : 1.2));
    painter.setBrush(theme.tender);
    painter.drawRoundedRect(plate.adjusted(1, 1, -1, -1), 5, 5);
    painter.setPen(theme.onMark);
    painter.setFont(typeface(11, QFont::Bold));
    painter.drawText(plate, Qt::AlignCenter, QString::number(intensity.value));
}

} // namespace raphe
