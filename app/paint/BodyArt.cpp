#include "app/paint/BodyArt.h"

#include <QPainter>
#include <QTransform>

#include <algorithm>
#include <array>

namespace raphe {

namespace {

QPointF toPoint(Point p)
{
    return {p.x, p.y};
}

const QTransform &mirror()
{
    static const QTransform transform = QTransform::fromScale(-1, 1);
    return transform;
}

// The less is known and the further away, the fainter.
double litStrength(const LitPlace &lit)
{
    static constexpr std::array grade{1.0, 0.85, 0.6, 0.4};
    static constexpr std::array ring{0.8, 0.65, 0.5, 0.36};
    return grade[static_cast<std::size_t>(lit.evidence)] * ring[static_cast<std::size_t>(std::clamp(lit.ring, 0, 3))];
}

QPainterPath bothHalves(const QPainterPath &half)
{
    QPainterPath whole = half;
    whole.addPath(mirror().map(half));
    whole.setFillRule(Qt::WindingFill);
    return whole;
}

QPen pen(const QColor &color, double width, Qt::PenStyle style = Qt::SolidLine)
{
    return QPen(color, width, style, Qt::RoundCap, Qt::RoundJoin);
}

QColor withAlpha(QColor color, double alpha)
{
    color.setAlphaF(static_cast<float>(alpha));
    return color;
}

// The colour seen where a thin coat lies on an opaque ground. Lines are drawn in it: Qt's PDF writer turns each line that is not
// opaque into the outline of its stroke, ten times the size and the time.
QColor over(const QColor &ground, const QColor &coat, double alpha)
{
    const auto mixed = [alpha](int below, int above) { return qRound(below + (above - below) * alpha); };
    return {mixed(ground.red(), coat.red()), mixed(ground.green(), coat.green()), mixed(ground.blue(), coat.blue())};
}

Qt::PenStyle styleOf(Grade grade)
{
    switch (grade) {
    case Grade::Verified:
    case Grade::Supported: return Qt::SolidLine;
    case Grade::Described: return Qt::DashLine;
    case Grade::Convention: break;
    }
    return Qt::DotLine;
}

} // namespace

QPainterPath painterPath(const Outline &outline)
{
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (const Contour &contour : outline) {
        path.moveTo(toPoint(contour.start));
        for (const Cubic &c : contour.segments)
            path.cubicTo(toPoint(c.control1), toPoint(c.control2), toPoint(c.end));
        if (contour.closed)
            path.closeSubpath();
    }
    return path;
}

BodyArt::BodyArt(const Atlas &atlas, const Drawing &drawing, Side facing) : m_atlas(&atlas), m_drawing(&drawing), m_facing(facing)
{
    const bool whole = isWhole(drawing.view());
    const QTransform drawn = whole && facing == Side::Left ? mirror() : QTransform();
    const QPainterPath half = drawn.map(painterPath(drawing.silhouette()));
    if (half.isEmpty() || half.elementAt(0) == half.currentPosition()) { // comes back to its start: a whole view, or one foot
        m_silhouette = whole ? half : bothHalves(half);
    } else { // from crown to crotch: its mirror image, backwards, closes the figure
        m_silhouette = half;
        m_silhouette.connectPath(mirror().map(half.toReversed()));
        m_silhouette.closeSubpath();
    }
    for (const DrawnShape &shape : drawing.shapes()) {
        Art art{shape.structure, shape.layer, atlas.at(shape.structure).kind, {}, drawn.map(painterPath(shape.outline)), {}, {}};
        art.shape = whole ? art.half : bothHalves(art.half);
        art.box = art.shape.controlPointRect();
        for (const Outline &fibre : shape.fibres)
            art.fibres.addPath(drawn.map(painterPath(fibre)));
        if (!whole)
            art.fibres.addPath(mirror().map(art.fibres));
        m_art.push_back(std::move(art));
    }
}

QRectF BodyArt::frame() const
{
    const Box &box = m_drawing->frame();
    const QRectF frame(QPointF(box.left, box.top), QPointF(box.right, box.bottom));
    return isWhole(m_drawing->view()) && m_facing == Side::Left ? mirror().mapRect(frame) : frame;
}

void BodyArt::paintArt(QPainter &painter, const Theme &theme, const Art &art, double strength, double unitsPerPixel) const
{
    QColor fill = theme.layer(art.layer);
    if (art.kind == Kind::Joint)
        fill = theme.dark ? QColor(0x6a, 0x8a, 0x90) : QColor(0xbd, 0xd3, 0xd4);
    else if (art.kind == Kind::Landmark)
        fill = theme.dark ? QColor(0xb4, 0xa8, 0x86) : QColor(0xdf, 0xd0, 0xa8);
    const bool skinTile = art.layer == Layer::Skin || art.layer == Layer::SuperficialFascia;
    const double lineWidth = std::max((skinTile ? 0.9 : 0.7) * unitsPerPixel, 0.35);
    const double coat = strength * (skinTile ? 0.9 : 0.96);
    const QColor ground = over(theme.skin, fill, coat);
    painter.setBrush(withAlpha(fill, coat));
    painter.setPen(pen(over(ground, theme.line, strength * (skinTile ? 0.45 : 0.75)), lineWidth));
    painter.drawPath(art.shape);
    if (!art.fibres.isEmpty()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(pen(over(ground, theme.line, strength * 0.4), std::max(0.6 * unitsPerPixel, 0.3)));
        painter.drawPath(art.fibres);
    }
}

void BodyArt::paintLayers(QPainter &painter, const Theme &theme, const BodyLook &look) const
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.skin);
    painter.drawPath(m_silhouette);
    const QRectF seen = painter.hasClipping() ? painter.clipBoundingRect() : QRectF();
    for (const Art &art : m_art) {
        if (!seen.isEmpty() && !seen.intersects(art.box))
            continue;
        const bool small = art.kind == Kind::Joint || art.kind == Kind::Landmark;
        if (art.layer == look.layer)
            paintArt(painter, theme, art, 1.0, look.unitsPerPixel);
        else if (art.layer > look.layer && !small && look.layer > Layer::SuperficialFascia)
            paintArt(painter, theme, art, art.layer == Layer::Bone ? 0.5 : 0.28, look.unitsPerPixel);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen(theme.line, std::max(1.4 * look.unitsPerPixel, 0.8)));
    painter.drawPath(m_silhouette);
}

void BodyArt::paintHighlights(QPainter &painter, const Theme &theme, const BodyLook &look) const
{
    painter.setRenderHint(QPainter::Antialiasing);
    const double unit = look.unitsPerPixel;
    for (const Place &place : look.found) {
        painter.setBrush(withAlpha(theme.lit, 0.45));
        painter.setPen(pen(theme.line, std::max(1.2 * unit, 0.5)));
        painter.drawPath(outlineOf(place));
    }
    for (auto it = look.lit.rbegin(); it != look.lit.rend(); ++it) { // nearest ring on top
        const QPainterPath path = outlineOf(it->place);
        painter.setBrush(withAlpha(theme.lit, litStrength(*it)));
        const double width = it->evidence == Grade::Verified ? 2.2 : 1.1;
        painter.setPen(pen(withAlpha(theme.ink, 0.8), std::max(width * unit, 0.4), styleOf(it->evidence)));
        painter.drawPath(path);
    }
    if (look.hovered) {
        painter.setBrush(withAlpha(theme.accent, 0.18));
        painter.setPen(pen(theme.accent, 1.6 * unit));
        painter.drawPath(outlineOf(*look.hovered));
    }
    if (look.selected) {
        painter.setBrush(withAlpha(theme.accent, 0.3));
        painter.setPen(pen(theme.accent, 2.6 * unit));
        painter.drawPath(outlineOf(*look.selected));
    }
}

QPainterPath BodyArt::outlineOf(const Place &place) const
{
    QPainterPath out;
    out.setFillRule(Qt::WindingFill);
    const bool whole = isWhole(m_drawing->view());
    if (whole && place.side != m_facing && place.side != Side::Midline)
        return out;
    const auto add = [&](const StructureId &id) {
        for (const std::size_t index : m_drawing->shapesOf(id)) {
            const Art &art = m_art[index];
            if (whole || place.side == Side::Midline)
                out.addPath(art.shape);
            else
                out.addPath(m_drawing->signOf(place.side) > 0 ? art.half : mirror().map(art.half));
        }
    };
    add(place.structure);
    if (out.isEmpty())
        for (const StructureId &part : m_atlas->partsOf(place.structure))
            add(part);
    return out;
}

} // namespace raphe
