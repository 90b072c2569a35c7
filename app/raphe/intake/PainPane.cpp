#include "app/raphe/intake/PainPane.h"

#include "core/anatomy/MarkPoint.h"
#include "core/record/PaintedPlaces.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

namespace raphe {

PainPane::PainPane(const Atlas &atlas, const Drawing &drawing, const Pane &pane)
    : m_atlas(atlas), m_pane(pane), m_art(atlas, drawing, pane.facing)
{
    m_transform.frame = m_art.frame();
    for (const DrawnShape &shape : drawing.shapes()) {
        const Structure &structure = atlas.at(shape.structure);
        if (structure.kind != Kind::SurfaceRegion)
            continue;
        for (const Side side : atlas.sides(structure)) {
            const Place place{structure.id, side};
            if (find(place) || m_art.outlineOf(place).isEmpty())
                continue;
            if (auto centre = markPointIn(atlas, drawing, place)) {
                if (isWhole(drawing.view()) && side == Side::Midline && pane.facing == Side::Left)
                    centre->x = -centre->x;
                if (const auto seen = uncovered(place, *centre))
                    m_regions.push_back({place, *seen});
            }
        }
    }
    std::sort(m_regions.begin(), m_regions.end(), [](const Region &a, const Region &b) {
        return std::tie(a.centre.y, a.place.side, a.place.structure) < std::tie(b.centre.y, b.place.side, b.place.structure);
    });
}

// The nearest point at which the region is not covered by another, so that what is painted there is called by its name. Nothing
// when it is covered altogether.
std::optional<Point> PainPane::uncovered(const Place &place, Point centre) const
{
    constexpr int turns = 16;
    constexpr double farthest = 60; // units
    for (double away = 0; away < farthest; ++away)
        for (int i = 0; i < turns; ++i) {
            const double angle = 2 * std::numbers::pi * i / turns;
            const Point p{centre.x + away * std::cos(angle), centre.y + away * std::sin(angle)};
            if (skinAt(p) == place)
                return p;
        }
    return std::nullopt;
}

const PainPane::Region *PainPane::find(const Place &place) const
{
    const auto it = std::find_if(m_regions.begin(), m_regions.end(), [&](const Region &region) { return region.place == place; });
    return it == m_regions.end() ? nullptr : &*it;
}

std::optional<Place> PainPane::skinAt(Point p) const
{
    return raphe::skinAt(m_art.drawing(), m_atlas, p, m_pane.facing);
}

void PainPane::setRect(const QRect &rect)
{
    m_rect = rect;
    constexpr int nameHeight = 18; // the view's name stands under the figure
    m_transform.widget = rect.size() - QSize(0, nameHeight);
    forgetPicture();
}

QTransform PainPane::toPixels() const
{
    return m_transform.matrix() * QTransform::fromTranslate(m_rect.x(), m_rect.y());
}

QRect PainPane::boxOf(const Place &place) const
{
    return toPixels().mapRect(m_art.outlineOf(place).boundingRect()).toAlignedRect() & m_rect;
}

void PainPane::paintBody(QPainter &painter, const Theme &theme)
{
    const double ratio = painter.device()->devicePixelRatioF();
    if (m_picture.isNull() || m_picture.devicePixelRatio() != ratio) {
        m_picture = QPixmap(m_rect.size() * ratio);
        m_picture.setDevicePixelRatio(ratio);
        m_picture.fill(theme.ground);
        QPainter p(&m_picture);
        p.setTransform(m_transform.matrix(), true);
        BodyLook look;
        look.layer = Layer::Skin;
        look.unitsPerPixel = 1 / m_transform.scale();
        m_art.paintLayers(p, theme, look);
        p.resetTransform();
        BodyView::paintSideLetters(p, theme, m_art.drawing(), m_pane.facing, m_rect.size(), false);
    }
    painter.drawPixmap(m_rect.topLeft(), m_picture);
}

void PainPane::paintOutline(QPainter &painter, const Theme &theme, const Place &place) const
{
    painter.save();
    painter.setTransform(toPixels(), true);
    BodyLook look;
    look.hovered = place;
    look.unitsPerPixel = 1 / m_transform.scale();
    m_art.paintHighlights(painter, theme, look);
    painter.restore();
}

} // namespace raphe
