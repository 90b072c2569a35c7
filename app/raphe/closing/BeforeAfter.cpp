#include "app/raphe/closing/BeforeAfter.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/anatomy/MarkPoint.h"

#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>
#include <tuple>

namespace raphe {

namespace {

// What was read both times: what was not read again is not gone.
Finding comparable(Finding before, const Finding &now)
{
    before.familiar = false;
    if (!now.tenderness) {
        before.tenderness.reset();
        before.sore = false;
    }
    if (!now.restriction) {
        before.restriction.reset();
        before.stiff = false;
    }
    if (!now.play)
        before.play.reset();
    return before;
}

} // namespace

BeforeAfter::BeforeAfter(const Knowledge &knowledge, QWidget *parent)
    : QWidget(parent),
      m_knowledge(knowledge),
      m_both(new QWidget),
      m_before(new BodyPanes(knowledge)),
      m_now(new BodyPanes(knowledge))
{
    auto *row = new QHBoxLayout(m_both);
    row->setContentsMargins(0, 0, 0, 0);
    for (const auto &[title, panes] : {std::pair(tr("Before"), m_before), std::pair(tr("Now"), m_now)}) {
        auto *column = new QVBoxLayout;
        QLabel *head = heading(title);
        head->setAlignment(Qt::AlignHCenter);
        column->addWidget(head);
        column->addWidget(panes, 1);
        row->addLayout(column, 1);
        panes->setGraded(true);
        panes->setAttribute(Qt::WA_TransparentForMouseEvents); // nothing is chosen here
        panes->setFocusPolicy(Qt::NoFocus);
        panes->setAccessibleName(title);
    }
    auto *all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(m_both, 1);
    all->addWidget(
        m_words = hint(tr("The numbers are grades, on both drawings alike; a shield without one: nothing felt any more.")));
}

void BeforeAfter::setTheme(const Theme &theme)
{
    m_before->setTheme(theme);
    m_now->setTheme(theme);
}

void BeforeAfter::show(const Visit &visit)
{
    std::vector<Finding> before;
    std::vector<Finding> now;
    std::vector<Pane> panes;
    for (const Finding &again : visit.retested.findings)
        for (const Finding &first : visit.findings) {
            if (std::tie(first.place, first.spot, first.at) != std::tie(again.place, again.spot, again.at))
                continue;
            before.push_back(comparable(first, again));
            now.push_back(again);
            const auto at = markPoint(*m_knowledge.atlas, *m_knowledge.body, first.place);
            if (!at)
                continue;
            const Pane pane{at->view, first.place.side == Side::Left ? Side::Left : Side::Right};
            const bool isShown = std::any_of(panes.begin(), panes.end(), [&](const Pane &other) {
                return other.view == pane.view
                    && (other.facing == pane.facing || pane.view == View::Front || pane.view == View::Back);
            });
            if (!isShown)
                panes.push_back(pane.view == View::Front || pane.view == View::Back ? Pane{pane.view} : pane);
        }
    m_both->setVisible(!panes.empty());
    m_words->setVisible(!panes.empty());
    if (panes.empty())
        return;
    const Layer layer = m_knowledge.atlas->at(now.front().place.structure).layer;
    for (const auto &[drawing, findings] : {std::pair(m_before, &before), std::pair(m_now, &now)}) {
        if (drawing->shown() != panes)
            drawing->show(panes);
        drawing->setLayer(layer);
        drawing->setFindings(*findings, -1);
    }
}

} // namespace raphe
