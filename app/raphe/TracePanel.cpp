#include "app/raphe/TracePanel.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

TracePanel::TracePanel(VisitSession &session, QWidget *parent) : QWidget(parent), m_session(session), m_model(session.knowledge())
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);

    m_heading = new WrappedLabel;
    m_heading->setProperty("role", QStringLiteral("head"));
    m_step = new QPushButton(tr("Step"));
    m_step->setMinimumHeight(touchTarget);
    m_step->setToolTip(tr("Light up one step after the other (T)"));
    m_step->setAccessibleName(tr("Light up the next step"));
    auto *top = new QHBoxLayout;
    top->addWidget(m_heading, 1);
    top->addWidget(m_step);
    column->addLayout(top);

    auto *kinds = new QHBoxLayout;
    kinds->setSpacing(6);
    m_groups = new QButtonGroup(this);
    const auto addKind = [&](TraceGroup group, const QString &text, const QString &name) {
        auto *button = new QPushButton(text);
        button->setCheckable(true);
        button->setAccessibleName(name);
        button->setToolTip(name);
        button->setMinimumHeight(touchTarget);
        button->setStyleSheet(QStringLiteral("padding-left: 4px; padding-right: 4px;"));
        m_groups->addButton(button, static_cast<int>(group));
        kinds->addWidget(button, 1);
    };
    addKind(TraceGroup::Continuity, tr("Continuous"), tr("Tissues it is continuous with, up to three steps"));
    addKind(TraceGroup::SharedAttachment, tr("Attachments"), tr("What it attaches to, and what shares that attachment"));
    addKind(TraceGroup::AcrossJoint, tr("Joints"), tr("Joints it acts across, or muscles across the joint"));
    addKind(TraceGroup::Neighbour, tr("Layers"), tr("What lies directly over and under it"));
    m_groups->button(static_cast<int>(TraceGroup::Continuity))->setChecked(true);
    column->addLayout(kinds);

    m_list = new QListView;
    m_list->setAccessibleName(tr("Linked tissues"));
    m_list->setModel(&m_model);
    m_list->setWordWrap(true);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setUniformItemSizes(false);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setMouseTracking(true);
    m_delegate = new CardDelegate({TraceModel::ShortRole, TraceModel::LinesRole}, this);
    m_list->setItemDelegate(m_delegate);
    m_list->setMinimumHeight(48);
    column->addWidget(m_list, 1);

    auto *limits = new WrappedLabel(tr(
        "A link says how tissues hang together, not what causes the pain. It assists a trained practitioner; follow local law, "
        "scope of practice and licensed care."));
    limits->setProperty("role", QStringLiteral("quiet"));
    column->addWidget(limits);

    connect(m_groups, &QButtonGroup::idClicked, this, &TracePanel::refresh);
    connect(m_step, &QPushButton::clicked, this, &TracePanel::step);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex &now) {
        m_list->doItemsLayout(); // the chosen row opens, the others close
        m_list->scrollTo(now, QAbstractItemView::PositionAtTop);
        tell();
    });
    connect(&session, &VisitSession::aimChanged, this, [this] {
        m_ring = 1;
        refresh();
    });
    connect(&session, &VisitSession::findingsChanged, this, &TracePanel::refresh);
    refresh();
}

void TracePanel::setTheme(const Theme &theme)
{
    m_delegate->setTheme(theme);
    m_list->viewport()->update();
}

void TracePanel::step()
{
    const std::size_t last = std::max<std::size_t>(m_model.rings(), 1);
    m_ring = m_ring >= last ? 1 : m_ring + 1;
    refresh();
    for (int row = 0; row < m_model.rowCount(); ++row) // the rows that this step has lit
        if (m_model.rows()[static_cast<std::size_t>(row)].path.size() == m_ring) {
            m_list->scrollTo(m_model.index(row), QAbstractItemView::PositionAtTop);
            break;
        }
}

void TracePanel::refresh()
{
    const auto &aim = m_session.aim();
    const int current = m_session.currentFinding();
    const auto place = aim ? std::optional(aim->place) : std::nullopt;
    m_model.show(place, static_cast<TraceGroup>(m_groups->checkedId()), m_ring);
    m_step->setEnabled(m_model.rings() > 0);
    m_step->setText(
        m_model.rings() > 1 ? tr("Step %1 of %2").arg(std::min(m_ring, m_model.rings())).arg(m_model.rings()) : tr("Step"));
    if (!aim)
        m_heading->say(tr("Choose a finding to see what it is tied to"));
    else if (current < 0)
        m_heading->say(tr("Tied to this place (nothing recorded here yet)"));
    else
        m_heading->say(tr("Finding %1 is tied to").arg(current + 1));
    tell();
}

void TracePanel::tell()
{
    std::vector<LitPlace> lit;
    std::vector<PathStep> path;
    const int row = m_list->currentIndex().row();
    const auto light = [&](const Traced &traced) {
        for (std::size_t i = 0; i < traced.path.size(); ++i)
            lit.push_back({traced.path[i].to, static_cast<int>(i) + 1, traced.path[i].evidence});
    };
    if (row >= 0 && row < m_model.rowCount()) {
        const Traced &traced = m_model.rows()[static_cast<std::size_t>(row)];
        light(traced);
        path = traced.path;
    } else {
        for (const Traced &traced : m_model.rows())
            lit.push_back({traced.place, static_cast<int>(traced.path.size()), weakestOf(traced.path)});
    }
    Q_EMIT litChanged(lit, path);
}

} // namespace raphe
