#include "app/raphe/BodyView.h"

#include "app/raphe/BodyViewAccessible.h"
#include "core/anatomy/MarkPoint.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr double smallest = 1;
constexpr double largest = 12;
constexpr double marginPixels = 14;
constexpr double figureHalfWidth = 203; // units: hands included
constexpr double markPixels = 24;

bool isDirectlyNamed(Kind kind) // landmarks and joints are small: a touch inside one means it
{
    return kind == Kind::Landmark || kind == Kind::Joint;
}

} // namespace

BodyView::BodyView(const Atlas &atlas, const Drawing &drawing, QWidget *parent)
    : QWidget(parent), m_atlas(atlas), m_art(atlas, drawing)
{
    installBodyViewAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(180, 320);
    setAccessibleName(drawing.view() == View::Front ? tr("Front of the body") : tr("Back of the body"));
    setAccessibleDescription(
        tr("Arrow keys move between structures, Enter takes aim, plus and minus zoom, Page Up and Page Down change the layer."));
}

void BodyView::setTheme(const Theme &theme)
{
    m_theme = theme;
    viewChanged();
}

void BodyView::setLayer(Layer layer)
{
    m_look.layer = layer;
    m_look.hovered.reset();
    m_cursor.reset();
    viewChanged();
}

void BodyView::setSelected(std::optional<Place> place)
{
    m_look.selected = std::move(place);
    update();
}

void BodyView::setLit(std::vector<LitPlace> lit, std::vector<PathStep> path)
{
    m_look.lit = std::move(lit);
    m_path = std::move(path);
    update();
}

void BodyView::setMarks(std::vector<ShownMark> marks)
{
    m_marks = std::move(marks);
    update();
}

void BodyView::resetZoom()
{
    m_zoom = 1;
    m_pan = {0, 0};
    viewChanged();
}

void BodyView::zoomBy(double factor, QPointF around)
{
    const Point fixed = toBody(around);
    m_zoom = std::clamp(m_zoom * factor, smallest, largest);
    m_pan += around - toWidget(fixed);
    if (m_zoom == smallest)
        m_pan = {0, 0};
    viewChanged();
}

void BodyView::reveal(const Place &place)
{
    const auto centre = centreOf(place);
    if (!centre || rect().adjusted(40, 40, -40, -40).contains(toWidget(*centre).toPoint()))
        return;
    m_pan += QPointF(rect().center()) - toWidget(*centre);
    viewChanged();
}

double BodyView::scale() const
{
    const double fit = std::min((height() - 2 * marginPixels) / 1000.0, (width() - 2 * marginPixels) / (2 * figureHalfWidth));
    return std::max(fit, 0.05) * m_zoom;
}

QPointF BodyView::toWidget(Point p) const
{
    const double top = (height() - 1000 * scale() / m_zoom) / 2; // resting place of the crown
    return QPointF(width() / 2.0 + p.x * scale(), top + p.y * scale()) + m_pan;
}

Point BodyView::toBody(QPointF p) const
{
    const QPointF zero = toWidget({0, 0});
    return {(p.x() - zero.x()) / scale(), (p.y() - zero.y()) / scale()};
}

std::optional<Point> BodyView::centreOf(const Place &place) const
{
    const auto [it, fresh] = m_centres.try_emplace(place);
    if (fresh)
        it->second = markPointIn(m_atlas, drawing(), place);
    return it->second;
}

QRect BodyView::widgetRectOf(const Place &place) const
{
    const QRectF box = m_art.outlineOf(place).boundingRect();
    if (box.isEmpty())
        return {};
    return QRectF(toWidget({box.left(), box.top()}), toWidget({box.right(), box.bottom()})).toAlignedRect();
}

QString BodyView::nameOf(const Place &place) const
{
    return QString::fromStdString(m_atlas.spoken(place));
}

std::vector<Place> BodyView::placesShown() const
{
    std::vector<Place> places;
    for (const DrawnShape &shape : drawing().shapes())
        if (shape.layer == m_look.layer)
            for (const Side side : m_atlas.sides(m_atlas.at(shape.structure)))
                if (const Place place{shape.structure, side}; std::find(places.begin(), places.end(), place) == places.end())
                    places.push_back(place);
    const auto key = [this](const Place &p) { return std::pair(centreOf(p)->y, p.side); };
    std::sort(places.begin(), places.end(), [&](const Place &a, const Place &b) { return key(a) < key(b); });
    return places;
}

// The structure that a touch means: the one of the layer shown; else the first that lies deeper; else the outermost.
std::optional<UnderHit> BodyView::meantAt(const std::vector<UnderHit> &stack) const
{
    const auto named = std::find_if(stack.begin(), stack.end(), [this](const UnderHit &hit) {
        return hit.layer == m_look.layer && isDirectlyNamed(m_atlas.at(hit.place.structure).kind);
    });
    if (named != stack.end())
        return *named;
    const auto shown =
        std::find_if(stack.begin(), stack.end(), [this](const UnderHit &hit) { return hit.layer >= m_look.layer; });
    if (shown != stack.end())
        return *shown;
    return stack.empty() ? std::nullopt : std::optional(stack.front());
}

std::optional<Place> BodyView::placeAt(QPointF p) const
{
    const auto hit = meantAt(drawing().under(m_atlas, toBody(p)));
    return hit ? std::optional(hit->place) : std::nullopt;
}

void BodyView::viewChanged()
{
    m_baseIsOld = true;
    update();
}

void BodyView::paintBase()
{
    const double ratio = devicePixelRatioF();
    const QSize pixels = size() * ratio;
    if (!m_baseIsOld && m_base.size() == pixels)
        return;
    m_base = QPixmap(pixels);
    m_base.setDevicePixelRatio(ratio);
    m_base.fill(m_theme.ground);
    QPainter painter(&m_base);
    painter.translate(toWidget({0, 0}));
    painter.scale(scale(), scale());
    BodyLook look = m_look;
    look.unitsPerPixel = 1 / scale();
    m_art.paintLayers(painter, m_theme, look);
    m_baseIsOld = false;
}

void BodyView::paintEvent(QPaintEvent *)
{
    paintBase();
    QPainter painter(this);
    painter.drawPixmap(0, 0, m_base);
    painter.save();
    painter.translate(toWidget({0, 0}));
    painter.scale(scale(), scale());
    BodyLook look = m_look;
    look.unitsPerPixel = 1 / scale();
    if (hasFocus() && m_cursor)
        look.hovered = m_cursor;
    m_art.paintHighlights(painter, m_theme, look);
    painter.restore();
    paintPath(painter);
    paintMarks(painter);
    paintSideLetters(painter);
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme.accent, 2));
        painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 6, 6);
    }
}

// A thread from place to place, for the steps that this view can show.
void BodyView::paintPath(QPainter &painter) const
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    for (const PathStep &step : m_path) {
        const auto from = centreOf(step.from);
        const auto to = centreOf(step.to);
        if (!from || !to)
            continue;
        const QPointF a = toWidget(*from);
        const QPointF b = toWidget(*to);
        QPainterPath thread(a);
        const QPointF bow = QPointF(a.y() - b.y(), b.x() - a.x()) * 0.12;
        thread.quadTo((a + b) / 2 + bow, b);
        painter.strokePath(thread, QPen(m_theme.ground, 6, Qt::SolidLine, Qt::RoundCap));
        painter.strokePath(thread, QPen(m_theme.ink, 2.4, Qt::SolidLine, Qt::RoundCap));
        painter.setPen(QPen(m_theme.ground, 2));
        painter.setBrush(m_theme.ink);
        painter.drawEllipse(b, 5, 5);
        painter.setBrush(Qt::NoBrush);
    }
}

void BodyView::paintMarks(QPainter &painter) const
{
    std::vector<QPointF> points;
    const QPointF zero = toWidget({0, 0});
    for (const ShownMark &mark : m_marks)
        points.push_back(QPointF(mark.at.x, mark.at.y) * scale());
    points = spreadMarks(std::move(points), markPixels * 1.25);
    for (std::size_t i = 0; i < m_marks.size(); ++i)
        paintMark(painter, m_theme, m_marks[i].look, zero + points[i], markPixels);
}

void BodyView::paintSideLetters(QPainter &painter) const
{
    const bool rightOnRight = drawing().signOf(Side::Right) > 0;
    painter.setFont(typeface(15, QFont::Bold));
    const auto letter = [&](bool atLeft, const QString &text) {
        const QRectF box(atLeft ? 10 : width() - 42, 10, 32, 32);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_theme.panel);
        painter.drawRoundedRect(box, 6, 6);
        painter.setPen(m_theme.ink);
        painter.drawText(box, Qt::AlignCenter, text);
    };
    letter(true, rightOnRight ? tr("L", "left side of the patient") : tr("R", "right side of the patient"));
    letter(false, rightOnRight ? tr("R", "right side of the patient") : tr("L", "left side of the patient"));
    painter.setFont(typeface(10));
    painter.setPen(m_theme.quiet);
    painter.drawText(
        QRectF(0, height() - 26, width(), 20), Qt::AlignCenter, drawing().view() == View::Front ? tr("Front") : tr("Back"));
}

void BodyView::resizeEvent(QResizeEvent *)
{
    viewChanged();
}

void BodyView::wheelEvent(QWheelEvent *event)
{
    zoomBy(std::pow(1.0015, event->angleDelta().y()), event->position());
    event->accept();
}

void BodyView::mousePressEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    m_pressed = event->position();
    m_panAtPress = m_pan;
    m_dragging = false;
}

void BodyView::mouseMoveEvent(QMouseEvent *event)
{
    if (event->buttons() & Qt::LeftButton) {
        const QPointF moved = event->position() - m_pressed;
        m_dragging = m_dragging || moved.manhattanLength() > 8; // a hand with a pen trembles
        if (m_dragging && m_zoom > smallest) {
            m_pan = m_panAtPress + moved;
            viewChanged();
        }
        return;
    }
    const auto place = placeAt(event->position());
    if (place == m_look.hovered)
        return;
    m_look.hovered = place;
    Q_EMIT hovered(place ? nameOf(*place) : QString());
    update();
}

void BodyView::mouseReleaseEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton || m_dragging)
        return;
    const auto stack = drawing().under(m_atlas, toBody(event->position()));
    if (const auto hit = meantAt(stack)) {
        m_cursor = hit->place;
        Q_EMIT touched(hit->place, stack);
    }
}

void BodyView::leaveEvent(QEvent *)
{
    m_look.hovered.reset();
    Q_EMIT hovered({});
    update();
}

bool BodyView::event(QEvent *event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto *help = static_cast<QHelpEvent *>(event);
        const auto place = placeAt(help->pos());
        QToolTip::showText(help->globalPos(), place ? nameOf(*place) : QString(), this);
        return true;
    }
    return QWidget::event(event);
}

void BodyView::keyPressEvent(QKeyEvent *event)
{
    const double panStep = 60;
    const bool shift = event->modifiers() & Qt::ShiftModifier;
    const auto go = [&](int dx, int dy) {
        if (shift && m_zoom > smallest) {
            m_pan -= QPointF(dx, dy) * panStep;
            viewChanged();
        } else {
            moveCursor(dx, dy);
        }
    };
    switch (event->key()) {
    case Qt::Key_Left: go(-1, 0); break;
    case Qt::Key_Right: go(1, 0); break;
    case Qt::Key_Up: go(0, -1); break;
    case Qt::Key_Down: go(0, 1); break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomBy(1.25, m_cursor && centreOf(*m_cursor) ? toWidget(*centreOf(*m_cursor)) : QPointF(rect().center()));
        break;
    case Qt::Key_Minus: zoomBy(0.8, QPointF(rect().center())); break;
    case Qt::Key_Home: resetZoom(); break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (m_cursor)
            if (const auto centre = centreOf(*m_cursor)) {
                auto stack = drawing().under(m_atlas, *centre);
                if (std::none_of(stack.begin(), stack.end(), [&](const UnderHit &hit) { return hit.place == *m_cursor; }))
                    stack.insert(stack.begin(), {*m_cursor, m_look.layer});
                Q_EMIT touched(*m_cursor, stack);
            }
        break;
    default: QWidget::keyPressEvent(event);
    }
}

// Next structure of this layer in the direction of the key: near and straight ahead is best.
void BodyView::moveCursor(int dx, int dy)
{
    const auto places = placesShown();
    if (places.empty())
        return;
    if (!m_cursor) {
        setCursorPlace(places.front());
        return;
    }
    const auto here = centreOf(*m_cursor);
    if (!here)
        return;
    const Place *best = nullptr;
    double bestCost = 0;
    for (const Place &place : places) {
        const Point there = *centreOf(place);
        const double along = (there.x - here->x) * dx + (there.y - here->y) * dy;
        const double across = std::abs((there.x - here->x) * dy) + std::abs((there.y - here->y) * dx);
        if (place == *m_cursor || along <= 0.5)
            continue;
        const double cost = along + 2.5 * across;
        if (!best || cost < bestCost) {
            best = &place;
            bestCost = cost;
        }
    }
    if (best)
        setCursorPlace(*best);
}

void BodyView::setCursorPlace(const Place &place)
{
    m_cursor = place;
    reveal(place);
    Q_EMIT hovered(nameOf(place));
    QAccessibleEvent focus(this, QAccessible::Focus);
    const auto places = placesShown();
    focus.setChild(static_cast<int>(std::find(places.begin(), places.end(), place) - places.begin()));
    QAccessible::updateAccessibility(&focus);
    update();
}

void BodyView::focusInEvent(QFocusEvent *event)
{
    if (!m_cursor && m_look.selected && centreOf(*m_look.selected))
        m_cursor = m_look.selected;
    QWidget::focusInEvent(event);
    update();
}

void BodyView::focusOutEvent(QFocusEvent *event)
{
    QWidget::focusOutEvent(event);
    update();
}

} // namespace raphe
