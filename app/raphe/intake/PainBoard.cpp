// What is shown, and what changes it; hands and keys are in PainBoardInput.cpp.
#include "app/raphe/intake/PainBoard.h"

#include "app/paint/PainPatchArt.h"
#include "app/raphe/intake/PainBoardAccessible.h"
#include "app/raphe/intake/PlaceWords.h"

#include <QPaintEvent>
#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

constexpr double seam = 8; // pixels between two views

} // namespace

PainBoard::PainBoard(const Knowledge &knowledge, QWidget *parent) : QWidget(parent), m_knowledge(knowledge)
{
    installPainBoardAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAttribute(Qt::WA_AcceptTouchEvents);
    setAccessibleName(tr("Pain drawing"));
    setAccessibleDescription(tr(
        "Arrow keys move between places on the body, with Shift by a little. Space paints a dot and takes it away again. "
        "Square brackets change the brush, Control and Z takes back, Delete removes the patch, N and P go through the patches."));
    setViews({{View::Front}, {View::Back}});
}

PainBoard::~PainBoard() = default;

PainPane &PainBoard::paneOf(const Pane &pane)
{
    for (const auto &made : m_made)
        if (made->pane() == pane)
            return *made;
    m_made.push_back(std::make_unique<PainPane>(*m_knowledge.atlas, m_knowledge.body->of(pane.view), pane));
    return *m_made.back();
}

void PainBoard::setTheme(const Theme &theme)
{
    m_theme = theme;
    for (const auto &pane : m_made)
        pane->forgetPicture();
    update();
}

void PainBoard::setViews(const std::vector<Pane> &views)
{
    handLetsGo();
    m_cursor.reset();
    m_pointer.reset();
    m_shown.clear();
    for (const Pane &pane : views)
        m_shown.push_back(&paneOf(pane));
    layOut();
}

std::vector<Pane> PainBoard::views() const
{
    std::vector<Pane> views;
    for (const PainPane *pane : m_shown)
        views.push_back(pane->pane());
    return views;
}

void PainBoard::layOut()
{
    const int count = static_cast<int>(m_shown.size());
    for (int i = 0; i < count; ++i) {
        const int left = (width() + static_cast<int>(seam)) * i / count;
        const int right = (width() + static_cast<int>(seam)) * (i + 1) / count - static_cast<int>(seam);
        m_shown[static_cast<std::size_t>(i)]->setRect({left, 0, right - left, height()});
    }
    settle(m_editor.current(), false);
}

void PainBoard::resizeEvent(QResizeEvent *)
{
    layOut();
}

void PainBoard::setPatches(std::vector<PainPatch> patches)
{
    const int before = m_editor.current();
    m_editor.setPatches(std::move(patches));
    if (m_hand && !m_hand->erasing && !m_editor.isPainting()) // others took the drawing from under the hand
        m_hand.reset();
    settle(before, false);
}

void PainBoard::choose(int index)
{
    handLetsGo();
    const int before = m_editor.current();
    m_editor.choose(index);
    showPatch(m_editor.current());
    settle(before, false);
}

// The views stay as they are when one of them has the patch.
void PainBoard::showPatch(int index)
{
    if (index < 0)
        return;
    const PainPatch &patch = patches()[static_cast<std::size_t>(index)];
    if (paneFor(patch))
        return;
    for (const Arrangement &arrangement : BodyPanes::arrangements())
        for (const Pane &pane : arrangement.panes)
            if (canvasOf(pane.view, pane.facing) == canvasOf(patch)) {
                setViews(arrangement.panes);
                return;
            }
}

void PainBoard::setBrush(double radius)
{
    const double within = std::clamp(radius, PainLimits::leastRadius, PainLimits::greatestRadius);
    if (within == m_brush)
        return;
    m_brush = within;
    update();
    Q_EMIT brushChanged(m_brush);
}

void PainBoard::setReadOnly(bool readOnly)
{
    handLetsGo();
    m_readOnly = readOnly;
    update();
}

void PainBoard::setQuality(std::optional<PainQuality> quality)
{
    handLetsGo();
    if (!m_readOnly)
        settle(m_editor.current(), m_editor.setQuality(quality));
}

void PainBoard::setIntensity(std::optional<PainScore> intensity)
{
    handLetsGo();
    if (!m_readOnly)
        settle(m_editor.current(), m_editor.setIntensity(intensity));
}

void PainBoard::removeCurrent()
{
    handLetsGo();
    const int before = m_editor.current();
    if (!m_readOnly)
        settle(before, m_editor.removeCurrent());
}

void PainBoard::undoStroke()
{
    handLetsGo();
    const int before = m_editor.current();
    if (!m_readOnly)
        settle(before, m_editor.undo());
}

void PainBoard::clear()
{
    handLetsGo();
    const int before = m_editor.current();
    if (!m_readOnly)
        settle(before, m_editor.clear());
}

// After whatever may have changed: plates and places follow, the picture is painted anew, and who listens is told.
void PainBoard::settle(int currentBefore, bool isChanged)
{
    m_places.assign(patches().size(), std::nullopt);
    m_plates.assign(patches().size(), QRectF());
    for (std::size_t i = 0; i < patches().size(); ++i)
        if (const auto pane = paneFor(patches()[i]); pane && patches()[i].intensity)
            m_plates[i] = painPlate(patches()[i], m_shown[*pane]->toPixels(), m_shown[*pane]->rect());
    update();
    if (isChanged)
        Q_EMIT changed();
    if (currentBefore != current())
        Q_EMIT chosen(current());
}

const std::vector<PaintedPlace> &PainBoard::places(int index) const
{
    static const std::vector<PaintedPlace> none;
    const auto at = static_cast<std::size_t>(index);
    if (index < 0 || at >= m_places.size())
        return none;
    if (!m_places[at])
        m_places[at] = paintedPlaces(patches()[at], m_knowledge.body->of(patches()[at].view), *m_knowledge.atlas);
    return *m_places[at];
}

QString PainBoard::words(int index) const
{
    return index < 0 || index >= static_cast<int>(patches().size()) ? QString() : plainWords(*m_knowledge.atlas, places(index));
}

std::optional<std::size_t> PainBoard::paneAt(QPointF p) const
{
    for (std::size_t i = 0; i < m_shown.size(); ++i)
        if (QRectF(m_shown[i]->rect()).contains(p))
            return i;
    return std::nullopt;
}

std::optional<std::size_t> PainBoard::paneFor(const PainPatch &patch) const
{
    for (std::size_t i = 0; i < m_shown.size(); ++i)
        if (m_shown[i]->canvas() == canvasOf(patch))
            return i;
    return std::nullopt;
}

std::vector<PainBoard::Spot> PainBoard::spots() const
{
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < m_shown.size(); ++i)
        for (const PainPane::Region &region : m_shown[i]->regions())
            spots.push_back({i, region.place});
    return spots;
}

std::optional<PainBoard::Spot> PainBoard::spotAtCursor() const
{
    return m_cursor && m_cursor->place ? std::optional(Spot{m_cursor->pane, *m_cursor->place}) : std::nullopt;
}

QString PainBoard::nameOf(const Spot &spot) const
{
    const QString words = plainWords(*m_knowledge.atlas, spot.place);
    return m_shown.size() > 1 && spot.pane < m_shown.size()
        ? tr("%1, view: %2", "part of the body, view on which it is seen").arg(words, m_shown[spot.pane]->title())
        : words;
}

QRect PainBoard::boxOf(const Spot &spot) const
{
    return spot.pane < m_shown.size() ? m_shown[spot.pane]->boxOf(spot.place) : QRect();
}

bool PainBoard::isPainted(const Spot &spot) const
{
    for (std::size_t i = 0; i < patches().size() && spot.pane < m_shown.size(); ++i)
        if (m_shown[spot.pane]->canvas() == canvasOf(patches()[i]))
            for (const PaintedPlace &painted : places(static_cast<int>(i)))
                if (painted.place == spot.place)
                    return true;
    return false;
}

QPointF PainBoard::pixelOf(const Pane &view, Point p) const
{
    for (const PainPane *pane : m_shown)
        if (pane->pane() == view)
            return pane->toBoard(p);
    return {};
}

double PainBoard::brushOn(const PainPane &pane, double brush)
{
    return std::min(isInset(pane.pane().view) ? 2 * brush : brush, PainLimits::greatestRadius);
}

void PainBoard::updateStroke(std::size_t pane, Point from, Point to)
{
    update(painPatchBounds({{{from, to}, brushOn(*m_shown[pane], m_brush)}}, m_shown[pane]->toPixels()).toAlignedRect()
        & m_shown[pane]->rect());
}

void PainBoard::updatePointer()
{
    if (!m_pointer)
        return;
    if (const auto pane = paneAt(*m_pointer)) {
        const Point p = m_shown[*pane]->toBody(*m_pointer);
        updateStroke(*pane, p, p);
    }
}

void PainBoard::paintEvent(QPaintEvent *event)
{
    QPainter painter(this);
    painter.fillRect(event->rect(), m_theme.ground);
    for (std::size_t i = 0; i < m_shown.size(); ++i)
        if (const QRect seen = m_shown[i]->rect() & event->rect(); !seen.isEmpty())
            paintPane(painter, i, seen);
    if (m_shown.size() > 1) {
        painter.setPen(QPen(m_theme.quiet, 1));
        const double x = m_shown[1]->rect().left() - seam / 2;
        painter.drawLine(QPointF(x, 12), QPointF(x, height() - 12));
    }
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme.accent, 2));
        painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 6, 6);
    }
}

// The current patch lies on top, and the plates above all patches.
void PainBoard::paintPane(QPainter &painter, std::size_t index, const QRect &seen)
{
    PainPane &pane = *m_shown[index];
    painter.save();
    painter.setClipRect(seen);
    pane.paintBody(painter, m_theme);
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < patches().size(); ++i)
        if (canvasOf(patches()[i]) == pane.canvas())
            order.push_back(i);
    const auto isCurrent = [this](std::size_t i) { return static_cast<int>(i) == current(); };
    std::stable_partition(order.begin(), order.end(), [&](std::size_t i) { return !isCurrent(i); });
    for (const std::size_t i : order)
        paintPainPatch(painter, m_theme, patches()[i], isCurrent(i), pane.toPixels(), QRectF(seen));
    for (const std::size_t i : order)
        if (i < m_plates.size() && !m_plates[i].isEmpty() && patches()[i].intensity)
            paintPainPlate(painter, m_theme, *patches()[i].intensity, isCurrent(i), m_plates[i]);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_cursor && hasFocus() && m_cursor->pane == index)
        paintCursor(painter);
    if (m_pointer && !m_readOnly && paneAt(*m_pointer) == index && !m_hand) {
        const double radius = brushOn(pane, m_brush) * pane.toPixels().m11();
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme.panel, 3));
        painter.drawEllipse(*m_pointer, radius, radius);
        painter.setPen(QPen(m_theme.ink, 1.4, m_erasing ? Qt::DashLine : Qt::SolidLine));
        painter.drawEllipse(*m_pointer, radius, radius);
    }
    painter.restore();
}

// The region's outline, and where in it the brush would come down.
void PainBoard::paintCursor(QPainter &painter) const
{
    const PainPane &pane = *m_shown[m_cursor->pane];
    if (m_cursor->place)
        pane.paintOutline(painter, m_theme, *m_cursor->place);
    const QPointF at = pane.toBoard(m_cursor->at);
    const double radius = brushOn(pane, m_brush) * pane.toPixels().m11();
    constexpr double arm = 5;
    painter.setBrush(Qt::NoBrush);
    for (const QPen &pen : {QPen(m_theme.panel, 4), QPen(m_theme.accent, 2)}) {
        painter.setPen(pen);
        painter.drawEllipse(at, radius, radius);
        painter.drawLine(at - QPointF(arm, 0), at + QPointF(arm, 0));
        painter.drawLine(at - QPointF(0, arm), at + QPointF(0, arm));
    }
}

} // namespace raphe
