#include "app/raphe/examination/FeelPanel.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/practice/FormParts.h"
#include "core/anatomy/Edge.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

constexpr int across = 4; // buttons beside each other

QHBoxLayout *rowOf(std::initializer_list<QWidget *> widgets)
{
    auto *row = new QHBoxLayout;
    row->setSpacing(6);
    for (QWidget *widget : widgets)
        row->addWidget(widget, 1);
    return row;
}

} // namespace

FeelPanel::FeelPanel(VisitSession &session, const std::vector<std::string> &textures, QWidget *parent)
    : QWidget(parent),
      m_session(session),
      m_all(new QWidget),
      m_clearOfTouch(toggleButton(tr("Clear of touch"), tr("Clear of touch: not tender; motion was not felt"))),
      m_clearOfMotion(toggleButton(tr("Clear of movement"), tr("Clear of movement: moves freely; soreness was not asked"))),
      m_ofJoints(new QWidget),
      m_play(ChoiceRow::ofNumbers(tr("Joint play"), JointPlay::highest)),
      m_endFeel(new ChoiceRow(tr("End feel"), {tr("soft"), tr("firm"), tr("hard"), tr("springy"), tr("empty"), tr("spasm")}, 6)),
      m_certain(toggleButton(tr("Very sure"), tr("Very sure of what was felt of the motion"))),
      m_afterComparing(toggleButton(tr("After comparing"), tr("Felt only after comparing with the other side"))),
      m_point(toggleButton(tr("Felt elsewhere as well ..."), tr("Pressing here is felt elsewhere: touch that place next"))),
      m_places(new QVBoxLayout),
      m_hint(hint()),
      m_sweep(pushButton(tr("Sweep along this edge ...")))
{
    auto *outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scrolled(m_all));
    auto *column = new QVBoxLayout(m_all);
    column->setContentsMargins(0, 4, 0, 4);
    column->setSpacing(8);
    column->addWidget(m_hint);
    column->addWidget(m_sweep);
    column->addLayout(rowOf({m_clearOfTouch, m_clearOfMotion}));
    column->addLayout(rowOf({m_certain, m_afterComparing}));
    auto *joints = new QVBoxLayout(m_ofJoints);
    joints->setContentsMargins(0, 0, 0, 0);
    joints->addWidget(hint(tr("Joint play: 0 fused, 3 normal, 6 unstable")));
    joints->addWidget(m_play);
    joints->addWidget(hint(tr("End feel")));
    joints->addWidget(m_endFeel);
    column->addWidget(m_ofJoints);
    // What was refused goes back.
    const auto onToggle = [this](QPushButton *button, auto act) {
        connect(button, &QPushButton::clicked, this, [this, act] {
            act();
            refresh();
        });
    };
    column->addWidget(heading(tr("Feels")));
    auto *grid = new QGridLayout;
    grid->setSpacing(6);
    for (std::size_t i = 0; i < textures.size(); ++i) {
        const QString word = QString::fromStdString(textures[i]);
        QPushButton *button = toggleButton(word, tr("Feels %1").arg(word));
        grid->addWidget(button, static_cast<int>(i) / across, static_cast<int>(i) % across);
        onToggle(button, [this, texture = textures[i]] { m_session.toggleTexture(texture); });
        m_textures.push_back(button);
    }
    column->addLayout(grid);
    column->addWidget(heading(tr("Felt elsewhere as well")));
    column->addLayout(m_places);
    column->addWidget(m_point);
    column->addStretch(1);

    onToggle(m_clearOfTouch, [this] { m_session.toggleClearOf(true, false); });
    onToggle(m_clearOfMotion, [this] { m_session.toggleClearOf(false, true); });
    onToggle(m_certain, [this] { m_session.toggleCertain(); });
    onToggle(m_afterComparing, [this] { m_session.toggleAfterComparing(); });
    connect(m_play, &ChoiceRow::chosen, this, [this] {
        if (m_play->unread().isEmpty())
            m_session.setPlay(m_play->value());
        else
            m_session.tell(tr("'%1' is no joint play; what was recorded stays.").arg(m_play->unread()));
        refresh();
    });
    connect(m_endFeel, &ChoiceRow::chosen, this, [this] {
        const auto chosen = m_endFeel->value();
        m_session.setEndFeel(chosen ? std::optional(static_cast<EndFeel>(*chosen)) : std::nullopt);
    });
    connect(m_sweep, &QPushButton::clicked, this, &FeelPanel::sweepWanted);
    connect(m_point, &QPushButton::clicked, this, &FeelPanel::refresh);
    connect(&session, &VisitSession::aimChanged, this, [this] {
        m_point->setChecked(false);
        refresh();
    });
    connect(&session, &VisitSession::findingsChanged, this, &FeelPanel::refresh);
    refresh();
}

// Nobody points who does not see that they do.
void FeelPanel::hideEvent(QHideEvent *event)
{
    QWidget::hideEvent(event);
    m_point->setChecked(false);
}

bool FeelPanel::isPointing() const
{
    return m_point->isChecked() && m_session.aim().has_value();
}

void FeelPanel::pointAt(const Place &place)
{
    m_point->setChecked(false);
    m_session.toggleRefersTo(place);
    refresh();
}

void FeelPanel::refresh()
{
    const auto &aim = m_session.aim();
    const int index = m_session.currentFinding();
    const Finding *f = index >= 0 ? &m_session.visit().findings[static_cast<std::size_t>(index)] : nullptr;
    const Atlas &atlas = *m_session.knowledge().atlas;
    m_all->setEnabled(aim.has_value() && m_session.visitId() != 0 && !m_session.isReadOnly());
    const bool isJoint = aim && atlas.at(aim->place.structure).kind == Kind::Joint;
    m_ofJoints->setVisible(isJoint);
    m_sweep->setVisible(aim && edgeOf(atlas, aim->place.structure));
    m_clearOfTouch->setChecked(f && f->clear.tenderness);
    m_clearOfMotion->setChecked(f && f->clear.motion);
    const bool saysOfMotion = f && f->saysOfMotion();
    for (QPushButton *button : {m_certain, m_afterComparing})
        button->setEnabled(saysOfMotion);
    m_certain->setChecked(f && f->certain);
    m_afterComparing->setChecked(f && f->afterComparing);
    m_play->give(f && f->play ? std::optional(f->play->grade) : std::nullopt);
    m_endFeel->give(f && f->endFeel ? std::optional(static_cast<int>(*f->endFeel)) : std::nullopt);
    for (QPushButton *button : m_textures) {
        const std::string word = button->text().toStdString();
        button->setChecked(f && std::find(f->texture.begin(), f->texture.end(), word) != f->texture.end());
    }
    m_hint->say(!aim       ? tr("Touch the body first.")
            : isPointing() ? tr("Now touch where it is felt as well, or find that place by its name.")
                           : tr("Palpation repeats only moderately from one examiner to another: stiffness counts for the "
                                "reasoning only when you are very sure."));
    showRefersTo(f);
}

void FeelPanel::showRefersTo(const Finding *finding)
{
    while (QLayoutItem *item = m_places->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (!finding)
        return;
    for (const Place &place : finding->refersTo) {
        const QString name = QString::fromStdString(m_session.knowledge().atlas->spoken(place));
        QPushButton *button = pushButton(tr("%1: take away", "a place").arg(name));
        connect(
            button, &QPushButton::clicked, this, [this, place] { m_session.toggleRefersTo(place); }, Qt::QueuedConnection);
        m_places->addWidget(button);
    }
}

} // namespace raphe
