#include "app/raphe/AimPanel.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "core/anatomy/Terms.h"
#include "core/record/VisitJson.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

void check(QButtonGroup *group, int id)
{
    group->setExclusive(false);
    for (QAbstractButton *button : group->buttons())
        button->setChecked(group->id(button) == id);
    group->setExclusive(true);
}

} // namespace

AimPanel::AimPanel(VisitSession &session, QWidget *parent) : QWidget(parent), m_session(session)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);

    m_title = new WrappedLabel;
    m_title->setProperty("role", QStringLiteral("title"));
    m_plain = new WrappedLabel;
    m_plain->setProperty("role", QStringLiteral("quiet"));
    column->addWidget(m_title);
    column->addWidget(m_plain);

    m_stack = new QListWidget;
    m_stack->setAccessibleName(tr("Under the point, outside in"));
    m_stack->setMinimumHeight(2 * 30 + 8); // two to four rows; the rest scrolls
    m_stack->setMaximumHeight(4 * 30 + 8);
    m_stack->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(m_stack, 1);
    connect(m_stack, &QListWidget::currentRowChanged, this, [this](int row) {
        if (!m_filling && m_session.aim() && row >= 0 && row < static_cast<int>(m_session.aim()->stack.size()))
            m_session.chooseFromStack(m_session.aim()->stack[static_cast<std::size_t>(row)].place);
    });

    m_scales = new QWidget;
    auto *scales = new QVBoxLayout(m_scales);
    scales->setContentsMargins(0, 0, 0, 0);
    scales->setSpacing(6);
    const QStringList tendernessNames{tr("Tenderness 0: none"), tr("Tenderness 1: mild"),
        tr("Tenderness 2: moderate, with grimace or flinch"), tr("Tenderness 3: severe, with withdrawal"),
        tr("Tenderness 4: withdraws from touch that is normally painless")};
    scales->addWidget(scaleRow(tr("Tenderness"),
        {QStringLiteral("0"), QStringLiteral("1"), QStringLiteral("2"), QStringLiteral("3"), QStringLiteral("4")},
        tendernessNames, m_tenderness));
    const QStringList restrictionNames{
        tr("Restriction 0: free"), tr("Restriction 1: slight"), tr("Restriction 2: clear"), tr("Restriction 3: hardly moves")};
    scales->addWidget(scaleRow(tr("Restriction"),
        {QStringLiteral("0"), QStringLiteral("1"), QStringLiteral("2"), QStringLiteral("3")}, restrictionNames, m_restriction));

    auto *words = new QHBoxLayout;
    words->setSpacing(6);
    const auto wordButton = [&](const QString &text, const QString &name, bool checkable) {
        auto *button = new QPushButton(text);
        button->setAccessibleName(name);
        button->setToolTip(name);
        button->setCheckable(checkable);
        button->setMinimumHeight(touchTarget);
        button->setStyleSheet(QStringLiteral("padding-left: 4px; padding-right: 4px;"));
        words->addWidget(button, 1);
        return button;
    };
    m_clear = wordButton(tr("Clear"), tr("Clear: not tender and moves freely (C)"), true);
    m_familiar = wordButton(tr("Familiar"), tr("Familiar: the patient knows this pain (F)"), true);
    m_unable = wordButton(tr("Could not"), tr("Could not be examined, with the reason (U)"), true);
    m_hurts = wordButton(tr("Hurts"), tr("It hurts here: the place of the complaint (B)"), true);
    m_remove = wordButton(tr("Remove"), tr("Remove this finding (Delete)"), false);
    scales->addLayout(words);
    const QStringList spotNames{
        tr("Spot: belly"), tr("Spot: origin"), tr("Spot: insertion"), tr("Spot: border"), tr("Spot: junction")};
    scales->addWidget(
        scaleRow({}, {tr("belly"), tr("origin"), tr("insertion"), tr("border"), tr("junction")}, spotNames, m_spots));
    column->addWidget(m_scales);

    connect(m_tenderness, &QButtonGroup::idClicked, this, [this](int grade) { m_session.setTenderness(grade); });
    connect(m_restriction, &QButtonGroup::idClicked, this, [this](int grade) { m_session.setRestriction(grade); });
    connect(m_spots, &QButtonGroup::idClicked, this, [this](int id) {
        const Spot spot = static_cast<Spot>(id);
        m_session.setSpot(m_session.aim() && m_session.aim()->spot == spot ? std::nullopt : std::optional(spot));
        showFinding();
    });
    connect(m_familiar, &QPushButton::clicked, this, [this] { m_session.toggleFamiliar(); });
    connect(m_clear, &QPushButton::clicked, this, [this] { m_session.setClear(); });
    connect(m_unable, &QPushButton::clicked, this, &AimPanel::askWhyUnable);
    connect(m_hurts, &QPushButton::clicked, this, [this] { m_session.toggleComplaint(); });
    connect(m_remove, &QPushButton::clicked, this, [this] { m_session.removeFinding(); });
    connect(&session, &VisitSession::aimChanged, this, &AimPanel::showAim);
    connect(&session, &VisitSession::findingsChanged, this, &AimPanel::showFinding);
    showAim();
}

QWidget *AimPanel::scaleRow(const QString &title, const QStringList &labels, const QStringList &names, QButtonGroup *&group)
{
    auto *row = new QWidget;
    auto *buttons = new QHBoxLayout(row);
    buttons->setContentsMargins(0, 0, 0, 0);
    buttons->setSpacing(6);
    if (!title.isEmpty()) {
        auto *head = new QLabel(title);
        head->setProperty("role", QStringLiteral("quiet"));
        head->setFixedWidth(76); // the buttons of both scales stand in line
        buttons->addWidget(head);
    }
    group = new QButtonGroup(row);
    for (int i = 0; i < labels.size(); ++i) {
        auto *button = new QPushButton(labels[i]);
        button->setCheckable(true);
        button->setAccessibleName(names[i]);
        button->setToolTip(names[i]);
        button->setMinimumSize(touchTarget, touchTarget);
        button->setStyleSheet(QStringLiteral("padding-left: 4px; padding-right: 4px;"));
        group->addButton(button, i);
        buttons->addWidget(button, 1);
    }
    return row;
}

void AimPanel::showAim()
{
    const Atlas &atlas = *m_session.knowledge().atlas;
    const auto &aim = m_session.aim();
    m_scales->setEnabled(aim.has_value() && m_session.visitId() != 0);
    m_filling = true;
    m_stack->clear();
    if (aim) {
        m_title->say(QString::fromStdString(atlas.spoken(aim->place)));
        m_plain->say(QString::fromStdString(atlas.plain(aim->place, "en")));
        for (std::size_t i = 0; i < aim->stack.size(); ++i) {
            const UnderHit &hit = aim->stack[i];
            const QString name = QString::fromStdString(atlas.spoken(hit.place));
            const QString full = tr("%1 - %2", "structure - layer").arg(name, QString::fromStdString(inWords(hit.layer)));
            auto *item = new QListWidgetItem(hit.layer == Layer::SuperficialFascia ? name : full); // its name says the layer
            item->setToolTip(full);
            item->setSizeHint({0, 30});
            m_stack->addItem(item);
            if (hit.place == aim->place)
                m_stack->setCurrentRow(static_cast<int>(i));
        }
        m_stack->scrollToItem(m_stack->currentItem(), QAbstractItemView::PositionAtCenter);
        for (QAbstractButton *button : m_spots->buttons())
            button->setEnabled(hasSpots(atlas.at(aim->place.structure).kind));
    } else {
        m_title->say(m_session.visitId() != 0 ? tr("Touch the body") : tr("Start with a new patient"));
        m_plain->say(tr("Choose a layer above, then touch where it hurts or where it is stuck. What lies under your finger "
                        "is listed here from the outside in."));
    }
    m_filling = false;
    showFinding();
}

void AimPanel::showFinding()
{
    const int index = m_session.currentFinding();
    const Finding *f = index >= 0 ? &m_session.visit().findings[static_cast<std::size_t>(index)] : nullptr;
    check(m_tenderness, f && f->tenderness ? f->tenderness->grade : -1);
    check(m_restriction, f && f->restriction ? f->restriction->grade : -1);
    check(m_spots, m_session.aim() && m_session.aim()->spot ? static_cast<int>(*m_session.aim()->spot) : -1);
    m_familiar->setChecked(f && f->familiar);
    m_clear->setChecked(f && f->isClear());
    m_unable->setChecked(f && f->isUnable());
    m_hurts->setChecked(m_session.hurtsAtAim());
    m_remove->setEnabled(f != nullptr);
}

void AimPanel::askWhyUnable()
{
    if (!m_session.aim())
        return;
    bool ok = false;
    const QString reason =
        QInputDialog::getText(this, tr("Could not examine"), tr("Why could it not be examined?"), QLineEdit::Normal, {}, &ok);
    if (ok)
        m_session.setUnable(reason.trimmed().toStdString());
    showFinding();
}

} // namespace raphe
