#include "app/raphe/treatment/PlacePicture.h"

#include "app/raphe/BodyView.h"
#include "core/anatomy/MarkPoint.h"

#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

// The place and what is around it: so many times its own extent, and no less than this, in 1/1000 of stature.
constexpr double timesItsExtent = 2.2;
constexpr double leastExtent = 220;
// Letters of the sides and the name of the view, of a picture of this height: their capitals are 12 mm high on a screen of 24
// inches.
constexpr double letterScale = 4.7;
constexpr double letterHeight = 1080;

} // namespace

PlacePicture::PlacePicture(const Knowledge &knowledge, const Theme &theme, QWidget *parent)
    : QWidget(parent), m_knowledge(knowledge), m_theme(theme)
{
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void PlacePicture::setPlace(const Place &place)
{
    if (m_place == place)
        return;
    m_place = place;
    m_art.reset();
    if (const auto at = markPoint(*m_knowledge.atlas, *m_knowledge.body, place))
        m_art.emplace(*m_knowledge.atlas, m_knowledge.body->of(at->view), place.side == Side::Left ? Side::Left : Side::Right);
    m_painted = {};
    update();
}

ViewTransform PlacePicture::transform() const
{
    ViewTransform out;
    out.widget = size();
    QRectF box = m_art->outlineOf(*m_place).boundingRect();
    if (box.isEmpty()) // a landmark has no shape
        if (const auto point = markPoint(*m_knowledge.atlas, *m_knowledge.body, *m_place))
            box = QRectF(point->point.x, point->point.y, 1, 1);
    const double extent = std::max(leastExtent, timesItsExtent * std::max(box.width(), box.height()));
    out.frame = QRectF(box.center() - QPointF(extent / 2, extent / 2), QSizeF(extent, extent));
    return out;
}

void PlacePicture::resizeEvent(QResizeEvent *event)
{
    m_painted = {};
    QWidget::resizeEvent(event);
}

void PlacePicture::paintEvent(QPaintEvent * /*event*/)
{
    if (!m_art)
        return;
    if (m_painted.isNull()) {
        m_painted = QPixmap(size() * devicePixelRatioF());
        m_painted.setDevicePixelRatio(devicePixelRatioF());
        m_painted.fill(m_theme.ground);
        QPainter painter(&m_painted);
        painter.setRenderHint(QPainter::Antialiasing);
        const ViewTransform transform = this->transform();
        painter.save();
        painter.setTransform(transform.matrix(), true);
        BodyLook look;
        look.layer = m_knowledge.atlas->at(m_place->structure).layer;
        look.selected = *m_place;
        look.unitsPerPixel = 1 / transform.scale();
        m_art->paintLayers(painter, m_theme, look);
        m_art->paintHighlights(painter, m_theme, look);
        painter.restore();
        const double scale = letterScale * height() / letterHeight;
        painter.scale(scale, scale);
        BodyView::paintSideLetters(painter, m_theme, m_art->drawing(), m_art->facing(), QSizeF(size()) / scale, false);
    }
    QPainter(this).drawPixmap(0, 0, m_painted);
}

} // namespace raphe
