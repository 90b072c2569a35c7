// Hands and keys on the PainBoard. One hand paints at a time: a pen takes over from a finger, whose stroke is then left out (it
// was the palm), and everything else waits.
#include "app/raphe/intake/PainBoard.h"

#include "app/raphe/NearestAhead.h"
#include "app/raphe/intake/PlaceWords.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QTabletEvent>
#include <QTouchEvent>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr double nudge = 6; // units

} // namespace

void PainBoard::handBegins(Device device, QPointF p, bool erasing)
{
    if (m_hand && m_hand->device == Device::Finger && device == Device::Pen) {
        m_editor.cancel();
        m_hand.reset();
        settle(current(), false);
    }
    const auto pane = paneAt(p);
    if (m_hand || !pane)
        return;
    const Point at = m_shown[*pane]->toBody(p);
    const Canvas canvas = m_shown[*pane]->canvas();
    if (m_readOnly) {
        if (const auto patch = m_editor.patchAt(canvas, at))
            choose(*patch);
        return;
    }
    updatePointer(); // the brush's ring gives way to what it paints
    const int before = current();
    const std::size_t count = patches().size();
    m_hand = Hand{device, *pane, at, erasing};
    if (erasing) {
        settle(before, m_editor.erase(canvas, at, at));
    } else if (const auto limit = m_editor.begin(canvas, brushOn(*m_shown[*pane], m_brush), at)) {
        m_hand.reset();
        tellRefused(*limit);
    } else if (current() != before && before >= 0 && before < static_cast<int>(count)) {
        update(); // two patches change their edges
    } else {
        updateStroke(*pane, at, at);
    }
    m_currentAtPress = before;
}

// The hand stays on the view where it came down, whatever it passes over.
void PainBoard::handMoves(Device device, QPointF p)
{
    if (!m_hand || m_hand->device != device)
        return;
    const PainPane &pane = *m_shown[m_hand->pane];
    const QRectF room(pane.rect());
    const Point to = pane.toBody({std::clamp(p.x(), room.left(), room.right()), std::clamp(p.y(), room.top(), room.bottom())});
    const Point from = std::exchange(m_hand->at, to);
    if (m_hand->erasing) {
        const int before = current();
        if (m_editor.erase(pane.canvas(), from, to))
            settle(before, true);
        return;
    }
    const auto &strokes = patches()[static_cast<std::size_t>(current())].strokes;
    const Point kept = strokes.back().points.back();
    const std::size_t count = patches().size();
    const std::size_t lines = strokes.size();
    const auto limit = m_editor.extend(to);
    if (patches().size() != count || patches()[static_cast<std::size_t>(current())].strokes.size() != lines)
        update(); // it joined another patch, or a line was full
    else
        updateStroke(m_hand->pane, kept, to);
    if (limit)
        tellRefused(*limit);
}

void PainBoard::handEnds(Device device)
{
    if (m_hand && m_hand->device == device)
        handLetsGo();
}

void PainBoard::handLetsGo()
{
    if (!m_hand)
        return;
    m_hand.reset();
    m_editor.endErasing();
    if (m_editor.isPainting())
        settle(m_currentAtPress, m_editor.end());
}

void PainBoard::tellRefused(PainLimit limit)
{
    switch (limit) {
    case PainLimit::Patches:
        Q_EMIT refused(
            tr("There are %1 patches, which is all that a drawing can hold. What is painted stays.").arg(PainLimits::patches));
        break;
    case PainLimit::Strokes:
        Q_EMIT refused(
            tr("This patch has %1 strokes, which is all that it can hold. What is painted stays.").arg(PainLimits::strokes));
        break;
    case PainLimit::Points:
        Q_EMIT refused(tr("The drawing is full: nothing more can be painted until something is erased. What is painted stays."));
        break;
    }
}

void PainBoard::point(QPointF p)
{
    updatePointer();
    m_pointer = p;
    updatePointer();
    const auto pane = paneAt(p);
    tell(pane ? m_shown[*pane]->skinAt(m_shown[*pane]->toBody(p)) : std::nullopt);
}

void PainBoard::tell(const std::optional<Place> &place)
{
    const QString words = place ? plainWords(*m_knowledge.atlas, *place) : QString();
    if (words == m_told)
        return;
    m_told = words;
    Q_EMIT hovered(words);
}

void PainBoard::mousePressEvent(QMouseEvent *event)
{
    if (event->button() == Qt::LeftButton)
        handBegins(Device::Mouse, event->position(), m_erasing);
}

void PainBoard::mouseMoveEvent(QMouseEvent *event)
{
    point(event->position());
    handMoves(Device::Mouse, event->position());
}

void PainBoard::mouseReleaseEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    handMoves(Device::Mouse, event->position());
    handEnds(Device::Mouse);
}

void PainBoard::leaveEvent(QEvent *)
{
    updatePointer();
    m_pointer.reset();
    tell(std::nullopt);
}

void PainBoard::tabletEvent(QTabletEvent *event)
{
    const bool erasing = m_erasing || event->pointerType() == QPointingDevice::PointerType::Eraser;
    switch (event->type()) {
    case QEvent::TabletPress:
        if (event->button() == Qt::LeftButton)
            handBegins(Device::Pen, event->position(), erasing);
        break;
    case QEvent::TabletMove:
        point(event->position());
        handMoves(Device::Pen, event->position());
        break;
    case QEvent::TabletRelease:
        handMoves(Device::Pen, event->position());
        handEnds(Device::Pen);
        break;
    default: break;
    }
    event->accept(); // else it comes a second time, as a mouse
}

// One finger paints; others that come down meanwhile do nothing.
void PainBoard::touch(QTouchEvent &event)
{
    event.accept();
    if (event.type() == QEvent::TouchCancel) {
        if (m_hand && m_hand->device == Device::Finger) {
            m_editor.cancel();
            handLetsGo();
            settle(m_currentAtPress, false);
        }
        m_finger.reset();
        return;
    }
    for (const QEventPoint &finger : event.points()) {
        if (finger.state() == QEventPoint::Pressed && !m_finger) {
            m_finger = finger.id();
            setFocus(Qt::MouseFocusReason);
            handBegins(Device::Finger, finger.position(), m_erasing);
        }
        if (m_finger != finger.id())
            continue;
        if (finger.state() == QEventPoint::Updated || finger.state() == QEventPoint::Released)
            handMoves(Device::Finger, finger.position());
        if (finger.state() == QEventPoint::Released) {
            handEnds(Device::Finger);
            m_finger.reset();
        }
    }
}

// Keys of ours come here even where the window has them as shortcuts.
bool PainBoard::event(QEvent *event)
{
    switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::TouchCancel: touch(*static_cast<QTouchEvent *>(event)); return true;
    case QEvent::ShortcutOverride:
        if (isOurKey(*static_cast<QKeyEvent *>(event))) {
            event->accept();
            return true;
        }
        break;
    default: break;
    }
    return QWidget::event(event);
}

bool PainBoard::isOurKey(const QKeyEvent &event)
{
    if (event.matches(QKeySequence::Undo) || event.text() == QStringLiteral("[") || event.text() == QStringLiteral("]"))
        return true;
    if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))
        return false;
    switch (event.key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Space:
    case Qt::Key_Delete:
    case Qt::Key_N:
    case Qt::Key_P: return true;
    default: return false;
    }
}

void PainBoard::keyPressEvent(QKeyEvent *event)
{
    if (!isOurKey(*event)) {
        QWidget::keyPressEvent(event);
        return;
    }
    handLetsGo();
    if (event->matches(QKeySequence::Undo)) {
        undoStroke();
        return;
    }
    if (event->text() == QStringLiteral("[") || event->text() == QStringLiteral("]")) {
        stepBrush(event->text() == QStringLiteral("]") ? 1 : -1);
        return;
    }
    const auto go = [&](int dx, int dy) {
        if (event->modifiers() & Qt::ShiftModifier)
            nudgeCursor(dx, dy);
        else
            moveCursor(dx, dy);
    };
    const int count = static_cast<int>(patches().size());
    switch (event->key()) {
    case Qt::Key_Left: go(-1, 0); break;
    case Qt::Key_Right: go(1, 0); break;
    case Qt::Key_Up: go(0, -1); break;
    case Qt::Key_Down: go(0, 1); break;
    case Qt::Key_Space: dotAtCursor(); break;
    case Qt::Key_Delete: removeCurrent(); break;
    case Qt::Key_N:
        if (count > 0)
            choose((current() + 1) % count);
        break;
    case Qt::Key_P:
        if (count > 0)
            choose((std::max(current(), 0) + count - 1) % count);
        break;
    default: break;
    }
}

void PainBoard::stepBrush(int step)
{
    if (step > 0) {
        const auto larger = std::find_if(brushes.begin(), brushes.end(), [this](double size) { return size > m_brush; });
        setBrush(larger == brushes.end() ? brushes.back() : *larger);
    } else {
        const auto smaller = std::find_if(brushes.rbegin(), brushes.rend(), [this](double size) { return size < m_brush; });
        setBrush(smaller == brushes.rend() ? brushes.front() : *smaller);
    }
}

// To the next region, on this view or, to the left and right, on to the other one at the same height.
void PainBoard::moveCursor(int dx, int dy)
{
    const auto ahead = [&](std::size_t pane, Point from) {
        const auto &regions = m_shown[pane]->regions();
        const auto best = nearestAhead(
            regions.size(), [&](std::size_t i) { return regions[i].centre; }, from, dx, dy);
        if (best)
            putCursor({pane, regions[*best].centre, regions[*best].place});
        return best.has_value();
    };
    if (!m_cursor) {
        if (!m_shown.empty() && !m_shown.front()->regions().empty()) {
            const PainPane::Region &first = m_shown.front()->regions().front();
            putCursor({0, first.centre, first.place});
        }
        return;
    }
    const std::size_t here = m_cursor->pane;
    const std::size_t there = here + static_cast<std::size_t>(dx); // from 0 to the left: beyond every view
    if (ahead(here, m_cursor->at) || dx == 0 || there >= m_shown.size())
        return;
    const QRectF room(m_shown[there]->rect());
    const double y = m_shown[here]->toBoard(m_cursor->at).y();
    ahead(there, m_shown[there]->toBody({dx > 0 ? room.left() : room.right(), y}));
}

void PainBoard::nudgeCursor(int dx, int dy)
{
    if (!m_cursor) {
        moveCursor(dx, dy);
        return;
    }
    const PainPane &pane = *m_shown[m_cursor->pane];
    const Point to{m_cursor->at.x + dx * nudge, m_cursor->at.y + dy * nudge};
    if (pane.rect().contains(pane.toBoard(to).toPoint()))
        putCursor({m_cursor->pane, to, pane.skinAt(to)});
}

void PainBoard::putCursor(Cursor cursor)
{
    m_cursor = std::move(cursor);
    update();
    tell(m_cursor->place);
    if (const auto spot = spotAtCursor()) {
        const auto all = spots();
        QAccessibleEvent focus(this, QAccessible::Focus);
        focus.setChild(static_cast<int>(std::find(all.begin(), all.end(), *spot) - all.begin()));
        QAccessible::updateAccessibility(&focus);
    }
}

void PainBoard::dotAtCursor()
{
    if (!m_cursor)
        return;
    const Canvas canvas = m_shown[m_cursor->pane]->canvas();
    const int before = current();
    if (m_readOnly) {
        if (const auto patch = m_editor.patchAt(canvas, m_cursor->at))
            choose(*patch);
    } else if (m_erasing) {
        settle(before, m_editor.erase(canvas, m_cursor->at, m_cursor->at));
        m_editor.endErasing();
    } else if (m_editor.removeDot(canvas, m_cursor->at)) {
        settle(before, true);
    } else if (const auto limit = m_editor.begin(canvas, brushOn(*m_shown[m_cursor->pane], m_brush), m_cursor->at)) {
        tellRefused(*limit);
    } else {
        settle(before, m_editor.end());
    }
}

bool PainBoard::goTo(const Place &place)
{
    handLetsGo();
    const auto put = [&](std::size_t pane) {
        const PainPane::Region *region = m_shown[pane]->find(place);
        if (region)
            putCursor({pane, region->centre, region->place});
        return region != nullptr;
    };
    for (std::size_t i = 0; i < m_shown.size(); ++i)
        if (put(i))
            return true;
    for (const Arrangement &arrangement : BodyPanes::arrangements())
        for (std::size_t i = 0; i < arrangement.panes.size(); ++i)
            if (paneOf(arrangement.panes[i]).find(place)) {
                setViews(arrangement.panes);
                return put(i);
            }
    return false;
}

void PainBoard::paintAtCursor()
{
    if (const auto spot = spotAtCursor(); spot && !isPainted(*spot))
        dotAtCursor();
}

void PainBoard::focusInEvent(QFocusEvent *event)
{
    QWidget::focusInEvent(event);
    update();
}

void PainBoard::focusOutEvent(QFocusEvent *event)
{
    QWidget::focusOutEvent(event);
    update();
}

} // namespace raphe
