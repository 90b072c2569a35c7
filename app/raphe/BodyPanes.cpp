#include "app/raphe/BodyPanes.h"

#include "core/anatomy/MarkPoint.h"
#include "core/document/VisitMap.h"

#include <algorithm>

namespace raphe {

BodyPanes::BodyPanes(const Knowledge &knowledge, QWidget *parent) : QSplitter(parent), m_knowledge(knowledge)
{
    setChildrenCollapsible(false);
    show(arrangements().front().panes);
}

std::vector<Arrangement> BodyPanes::arrangements()
{
    return {{tr("Front and back"), Qt::Key_F2, {{View::Front}, {View::Back}}}, {tr("Front"), Qt::Key_F3, {{View::Front}}},
        {tr("Back"), Qt::Key_F4, {{View::Back}}}, {tr("Right side"), Qt::Key_F5, {{View::Side, Side::Right}}},
        {tr("Left side"), Qt::Key_F6, {{View::Side, Side::Left}}}, {tr("Soles"), Qt::Key_F7, {{View::Sole}}},
        {tr("Palms"), Qt::Key_F8, {{View::Palm}}}, {tr("Head, right side"), Qt::Key_F9, {{View::Head, Side::Right}}},
        {tr("Head, left side"), Qt::Key_F10, {{View::Head, Side::Left}}}};
}

BodyView &BodyPanes::viewOf(const Pane &pane)
{
    for (const Made &made : m_made)
        if (made.pane == pane)
            return *made.view;
    auto *view = new BodyView(*m_knowledge.atlas, m_knowledge.body->of(pane.view), pane.facing);
    view->hide();
    addWidget(view);
    m_made.push_back({pane, view});
    connect(view, &BodyView::touched, this, &BodyPanes::touched);
    connect(view, &BodyView::hovered, this, &BodyPanes::hovered);
    dress(pane, *view);
    return *view;
}

void BodyPanes::dress(const Pane &pane, BodyView &view)
{
    view.setTheme(m_theme);
    view.setLayer(m_layer);
    view.setSelected(m_selected);
    view.setLit(m_lit, m_path);
    view.setMarks(marksFor(pane));
    view.setUpsideDown(m_upsideDown);
}

void BodyPanes::show(const std::vector<Pane> &panes)
{
    const bool hadFocus = std::any_of(m_made.begin(), m_made.end(), [](const Made &made) { return made.view->hasFocus(); });
    m_shown = panes;
    for (const Pane &pane : panes)
        viewOf(pane).setVisible(true);
    for (const Made &made : m_made)
        if (std::find(panes.begin(), panes.end(), made.pane) == panes.end())
            made.view->hide();
    if (hadFocus)
        viewOf(panes.back()).setFocus();
}

void BodyPanes::showNext()
{
    const auto all = arrangements();
    const auto it = std::find_if(all.begin(), all.end(), [this](const Arrangement &a) { return a.panes == m_shown; });
    show(it == all.end() || it + 1 == all.end() ? all.front().panes : (it + 1)->panes);
}

void BodyPanes::setTheme(const Theme &theme)
{
    m_theme = theme;
    for (const Made &made : m_made)
        made.view->setTheme(theme);
}

void BodyPanes::setLayer(Layer layer)
{
    m_layer = layer;
    for (const Made &made : m_made)
        made.view->setLayer(layer);
}

void BodyPanes::setSelected(const std::optional<Place> &place)
{
    m_selected = place;
    for (const Made &made : m_made)
        made.view->setSelected(place);
}

void BodyPanes::setLit(const std::vector<LitPlace> &lit, const std::vector<PathStep> &path)
{
    m_lit = lit;
    m_path = path;
    for (const Made &made : m_made)
        made.view->setLit(lit, path);
}

void BodyPanes::setFindings(const std::vector<Finding> &findings, int current)
{
    m_findings = findings;
    m_current = current;
    for (const Made &made : m_made)
        made.view->setMarks(marksFor(made.pane));
}

void BodyPanes::setOrder(const std::optional<std::vector<Place>> &order)
{
    if (order == m_order)
        return;
    m_order = order;
    for (const Made &made : m_made)
        made.view->setMarks(marksFor(made.pane));
}

int BodyPanes::numberOf(std::size_t finding) const
{
    if (m_isGraded)
        return std::max(m_findings[finding].tendernessGrade(), m_findings[finding].restrictionGrade());
    if (!m_order)
        return static_cast<int>(finding) + 1;
    const auto it = std::find(m_order->begin(), m_order->end(), m_findings[finding].place);
    return it == m_order->end() ? 0 : static_cast<int>(it - m_order->begin()) + 1;
}

std::vector<ShownMark> BodyPanes::marksFor(const Pane &pane) const
{
    const Atlas &atlas = *m_knowledge.atlas;
    const Body &body = *m_knowledge.body;
    std::vector<ShownMark> marks;
    for (std::size_t i = 0; i < m_findings.size(); ++i) {
        const Finding &f = m_findings[i];
        std::optional<Point> at;
        if (pane.view == View::Front || pane.view == View::Back) {
            if (const auto page = markPointOnPage(atlas, body, f.place, f.spot, f.at); page && page->view == pane.view)
                at = page->point;
        } else if (!isWhole(pane.view) || f.place.side == pane.facing || f.place.side == Side::Midline) {
            at = markPointIn(atlas, body.of(pane.view), f.place, f.spot, f.at);
            if (at && isWhole(pane.view) && f.place.side == Side::Midline && pane.facing == Side::Left)
                at->x = -at->x;
        }
        if (at)
            marks.push_back({{markKindOf(f), 0, f.familiar, numberOf(i), m_current == static_cast<int>(i)}, *at});
    }
    return marks;
}

void BodyPanes::setUpsideDown(bool upsideDown)
{
    m_upsideDown = upsideDown;
    for (const Made &made : m_made)
        made.view->setUpsideDown(upsideDown);
}

void BodyPanes::resetZoom()
{
    for (const Made &made : m_made)
        made.view->resetZoom();
}

void BodyPanes::showView(const Place &place)
{
    const auto hasIt = [&](const Pane &pane) { return viewOf(pane).shows(place); };
    if (std::none_of(m_shown.begin(), m_shown.end(), hasIt))
        if (const auto at = markPoint(*m_knowledge.atlas, *m_knowledge.body, place)) {
            const Pane wanted{at->view, isWhole(at->view) && place.side == Side::Left ? Side::Left : Side::Right};
            for (const Arrangement &arrangement : arrangements())
                if (std::find(arrangement.panes.begin(), arrangement.panes.end(), wanted) != arrangement.panes.end()) {
                    show(arrangement.panes);
                    break;
                }
        }
}

void BodyPanes::reveal(const Place &place)
{
    showView(place);
    for (const Pane &pane : m_shown)
        viewOf(pane).reveal(place);
}

} // namespace raphe
