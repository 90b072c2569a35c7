#include "app/raphe/BodyView.h"

#include "app/raphe/BodyViewAccessible.h"
#include "app/raphe/NearestAhead.h"
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
constexpr double markPixels = 24;
constexpr int restMilliseconds = 90; // after the last step of a zoom or a pan
constexpr int fadeMilliseconds = 140;
constexpr double baseMargin = 0.25; // of the widget, on each side
constexpr double labelScale = 2.4; // pixels a unit from which names fit

QFont labelFont()
{
    return typeface(9.5, QFont::Medium);
}

bool isDirectlyNamed(Kind kind) // landmarks and joints are small: a touch inside one means it
{
    return kind == Kind::Landmark || kind == Kind::Joint;
}

} // namespace

BodyView::BodyView(const Atlas &atlas, const Drawing &drawing, Side facing, QWidget *parent)
    : QWidget(parent), m_atlas(atlas), m_art(atlas, drawing, facing)
{
    installBodyViewAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(180, 320);
    setAttribute(Qt::WA_OpaquePaintEvent);
    m_transform.frame = m_art.frame();
    setAccessibleName(tr("Body: %1").arg(title()));
    setAccessibleDescription(
        tr("Arrow keys move between structures, Enter takes aim, plus and minus zoom, Page Up and Page Down change the layer."));
    m_rest.setSingleShot(true);
    m_rest.setInterval(restMilliseconds);
    connect(&m_rest, &QTimer::timeout, this, [this] {
        if (!baseCovers() || m_baseTransform.zoom != m_transform.zoom)
            changed();
    });
    m_fade.setDuration(fadeMilliseconds);
    m_fade.setStartValue(1.0);
    m_fade.setEndValue(0.0);
    connect(&m_fade, &QVariantAnimation::valueChanged, this, qOverload<>(&QWidget::update));
    connect(&m_fade, &QVariantAnimation::finished, this, [this] { m_fading = {}; });
}

QString BodyView::titleOf(View view, Side facing)
{
    const bool right = facing == Side::Right;
    switch (view) {
    case View::Front: return tr("Front");
    case View::Back: return tr("Back");
    case View::Side: return right ? tr("Right side") : tr("Left side");
    case View::Sole: return tr("Soles");
    case View::Palm: return tr("Palms");
    case View::Head: break;
    }
    return right ? tr("Head, right side") : tr("Head, left side");
}

bool BodyView::shows(const Place &place) const
{
    return !m_art.outlineOf(place).isEmpty();
}

void BodyView::setTheme(const Theme &theme)
{
    m_theme = theme;
    changed();
}

void BodyView::setLayer(Layer layer)
{
    if (layer != m_look.layer && isVisible() && !m_baseIsOld) {
        m_fading = m_base;
        m_fadingTransform = m_baseTransform;
        m_fade.stop();
        m_fade.start();
    }
    m_look.layer = layer;
    m_look.hovered.reset();
    m_cursor.reset();
    changed();
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
    placeLabels();
    update();
}

void BodyView::resetZoom()
{
    m_transform.zoom = 1;
    m_transform.pan = {0, 0};
    changed();
}

void BodyView::setUpsideDown(bool upsideDown)
{
    m_transform.upsideDown = upsideDown;
    changed();
}

void BodyView::panBy(QPointF pixels)
{
    m_transform.pan += pixels.toPoint(); // whole pixels keep the picture crisp
    moved();
}

void BodyView::zoomBy(double factor, QPointF around)
{
    const Point fixed = toBody(around);
    m_transform.zoom = std::clamp(m_transform.zoom * factor, smallest, largest);
    m_transform.pan += around - toWidget(fixed);
    if (m_transform.zoom == smallest)
        m_transform.pan = {0, 0};
    moved();
}

void BodyView::reveal(const Place &place)
{
    const auto centre = centreOf(place);
    if (!centre || rect().adjusted(40, 40, -40, -40).contains(toWidget(*centre).toPoint()))
        return;
    panBy(QPointF(rect().center()) - toWidget(*centre));
}

std::optional<Point> BodyView::centreOf(const Place &place) const
{
    const auto [it, fresh] = m_centres.try_emplace(place);
    if (fresh && shows(place)) {
        it->second = markPointIn(m_atlas, drawing(), place);
        if (it->second && isWhole(drawing().view()) && place.side == Side::Midline && facing() == Side::Left)
            it->second->x = -it->second->x;
    }
    return it->second;
}

QRect BodyView::widgetRectOf(const Place &place) const
{
    const QRectF box = m_art.outlineOf(place).boundingRect();
    if (box.isEmpty())
        return {};
    return m_transform.matrix().mapRect(box).toAlignedRect();
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
                if (const Place place{shape.structure, side};
                    centreOf(place) && std::find(places.begin(), places.end(), place) == places.end())
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
    const auto hit = meantAt(under(toBody(p)));
    return hit ? std::optional(hit->place) : std::nullopt;
}

std::vector<UnderHit> BodyView::under(Point p) const
{
    return drawing().under(m_atlas, p, facing());
}

void BodyView::moved()
{
    m_rest.start();
    update();
}

void BodyView::changed()
{
    m_baseIsOld = true;
    update();
}

bool BodyView::baseCovers() const
{
    if (m_base.isNull() || m_baseTransform.upsideDown != m_transform.upsideDown || m_baseTransform.widget != m_transform.widget)
        return false;
    const QRectF painted =
        QRectF(rect()).adjusted(-baseMargin * width(), -baseMargin * height(), baseMargin * width(), baseMargin * height());
    const QTransform now = m_baseTransform.matrix().inverted() * m_transform.matrix();
    return now.mapRect(painted).contains(QRectF(rect()));
}

void BodyView::paintBase()
{
    if (!m_baseIsOld && baseCovers())
        return;
    const double ratio = devicePixelRatioF();
    const QPointF margin(std::floor(baseMargin * width()), std::floor(baseMargin * height()));
    m_base = QPixmap((QSizeF(size()) + QSizeF(2 * margin.x(), 2 * margin.y())).toSize() * ratio);
    m_base.setDevicePixelRatio(ratio);
    m_base.fill(m_theme.ground);
    QPainter painter(&m_base);
    painter.translate(margin);
    painter.setTransform(m_transform.matrix(), true);
    const QRectF seen = painter.transform().inverted().mapRect(QRectF(QPointF(0, 0), QSizeF(m_base.size()) / ratio));
    painter.setClipRect(seen);
    BodyLook look = m_look;
    look.unitsPerPixel = 1 / m_transform.scale();
    m_art.paintLayers(painter, m_theme, look);
    m_baseTransform = m_transform;
    m_baseIsOld = false;
    placeLabels();
}

// Names of the layer shown, where they find room; large structures choose first.
void BodyView::placeLabels()
{
    m_labels.clear();
    if (m_transform.scale() * drawing().scale() < labelScale)
        return;
    std::vector<Label> wanted;
    for (const Place &place : placesShown()) {
        const QPointF at = toWidget(*centreOf(place));
        if (!rect().contains(at.toPoint()))
            continue;
        const QRectF box = m_transform.matrix().mapRect(m_art.outlineOf(place).controlPointRect());
        const Structure &s = m_atlas.at(place.structure);
        wanted.push_back({QString::fromStdString(s.names.english), at, box.width() * box.height(), {}});
    }
    const QFontMetricsF metrics(labelFont());
    std::vector<QRectF> taken; // marks stand above names
    for (const ShownMark &mark : m_marks)
        taken.emplace_back(toWidget(mark.at) - QPointF(markPixels, markPixels) / 2, QSizeF(markPixels, markPixels));
    m_labels = placedLabels(std::move(wanted), QRectF(rect()), taken,
        [&](const QString &text) { return metrics.size(Qt::TextSingleLine, text) + QSizeF(8, 2); });
}

void BodyView::paintLabels(QPainter &painter) const
{
    painter.setFont(labelFont());
    QColor plate = m_theme.panel;
    plate.setAlphaF(0.82F);
    for (const Label &label : m_labels) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(plate);
        painter.drawRoundedRect(label.box, 4, 4);
        painter.setPen(m_theme.ink);
        painter.drawText(label.box, Qt::AlignCenter, label.text);
    }
}

void BodyView::paintEvent(QPaintEvent *)
{
    if (m_baseIsOld || !m_rest.isActive() || !baseCovers())
        paintBase();
    QPainter painter(this);
    const QPointF margin(std::floor(baseMargin * width()), std::floor(baseMargin * height()));
    const auto paintPicture = [&](const QPixmap &picture, const ViewTransform &painted) {
        const QTransform since = painted.matrix().inverted() * m_transform.matrix();
        painter.save();
        painter.setTransform(since, true);
        painter.setRenderHint(QPainter::SmoothPixmapTransform, since.type() > QTransform::TxTranslate);
        painter.drawPixmap(-margin, picture);
        painter.restore();
    };
    paintPicture(m_base, m_baseTransform);
    if (!m_fading.isNull() && m_fading.size() == m_base.size()) {
        painter.setOpacity(m_fade.currentValue().toDouble());
        paintPicture(m_fading, m_fadingTransform);
        painter.setOpacity(1);
    }
    painter.save();
    painter.setTransform(m_transform.matrix(), true);
    BodyLook look = m_look;
    look.unitsPerPixel = 1 / m_transform.scale();
    if (hasFocus() && m_cursor)
        look.hovered = m_cursor;
    m_art.paintHighlights(painter, m_theme, look);
    painter.restore();
    if ((m_baseTransform.matrix().inverted() * m_transform.matrix()).isIdentity()) // the hand rests
        paintLabels(painter);
    paintPath(painter);
    paintMarks(painter);
    paintSideLetters(painter, m_theme, drawing(), facing(), size(), m_transform.upsideDown);
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
        points.push_back(toWidget(mark.at) - zero);
    points = spreadMarks(std::move(points), markPixels * 1.25);
    for (std::size_t i = 0; i < m_marks.size(); ++i)
        paintMark(painter, m_theme, m_marks[i].look, zero + points[i], markPixels);
}

void BodyView::paintSideLetters(
    QPainter &painter, const Theme &theme, const Drawing &drawing, Side facing, QSizeF size, bool upsideDown)
{
    painter.setFont(typeface(15, QFont::Bold));
    const auto letter = [&](bool atLeft, const QString &text) {
        const QRectF box(atLeft ? 10 : size.width() - 42, 10, 32, 32);
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.panel);
        painter.drawRoundedRect(box, 6, 6);
        painter.setPen(theme.ink);
        painter.drawText(box, Qt::AlignCenter, text);
    };
    const QString left = tr("L", "left side of the patient");
    const QString right = tr("R", "right side of the patient");
    if (isWhole(drawing.view())) {
        letter(true, facing == Side::Right ? right : left);
    } else {
        const bool rightOnRight = (drawing.signOf(Side::Right) > 0) != upsideDown;
        letter(true, rightOnRight ? left : right);
        letter(false, rightOnRight ? right : left);
    }
    painter.setFont(typeface(10));
    painter.setPen(theme.quiet);
    const QString title = titleOf(drawing.view(), facing);
    painter.drawText(QRectF(0, size.height() - 26, size.width(), 20), Qt::AlignCenter,
        upsideDown ? tr("%1, from the head end").arg(title) : title);
}

void BodyView::resizeEvent(QResizeEvent *)
{
    m_transform.widget = size();
    changed();
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
    m_panAtPress = m_transform.pan;
    m_dragging = false;
}

void BodyView::mouseMoveEvent(QMouseEvent *event)
{
    if (event->buttons() & Qt::LeftButton) {
        const QPointF dragged = event->position() - m_pressed;
        m_dragging = m_dragging || dragged.manhattanLength() > 8; // a hand with a pen trembles
        if (m_dragging && m_transform.zoom > smallest)
            panBy(m_panAtPress + dragged - m_transform.pan);
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
    const auto stack = under(toBody(event->position()));
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
        if (shift && m_transform.zoom > smallest)
            panBy(-QPointF(dx, dy) * panStep);
        else if (m_transform.upsideDown) // the arrows mean the screen
            moveCursor(-dx, -dy);
        else
            moveCursor(dx, dy);
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
                auto stack = under(*centre);
                if (std::none_of(stack.begin(), stack.end(), [&](const UnderHit &hit) { return hit.place == *m_cursor; }))
                    stack.insert(stack.begin(), {*m_cursor, m_look.layer});
                Q_EMIT touched(*m_cursor, stack);
            }
        break;
    default: QWidget::keyPressEvent(event);
    }
}

// Next structure of this layer in the direction of the key.
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
    const auto best = nearestAhead(
        places.size(), [&](std::size_t i) { return *centreOf(places[i]); }, *here, dx, dy);
    if (best)
        setCursorPlace(places[*best]);
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
