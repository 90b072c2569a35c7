#include "app/raphe/plan/PlanPanel.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/words/ErrorText.h"
#include "core/plan/PlanWords.h"
#include "core/treatment/TreatmentRun.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QShortcut>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <utility>

namespace raphe {

namespace {

constexpr int fewestMinutes = 5;
constexpr int mostMinutes = 90;
constexpr std::chrono::milliseconds restBeforeKeeping{400}; // of the slider

QString words(const std::string &text)
{
    return QString::fromStdString(text);
}

QToolButton *menuButton(const QString &text, const QString &name)
{
    auto *button = new QToolButton;
    button->setText(text);
    button->setAccessibleName(name);
    button->setToolTip(name);
    button->setPopupMode(QToolButton::InstantPopup);
    button->setMinimumHeight(touchTarget);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    auto *menu = new QMenu(button);
    menu->setToolTipsVisible(true);
    button->setMenu(menu);
    return button;
}

} // namespace

PlanPanel::PlanPanel(VisitSession &session, Settings &settings, QWidget *parent)
    : QWidget(parent),
      m_session(session),
      m_settings(settings),
      m_model(new PlanModel(*session.knowledge().atlas, this)),
      m_delegate(new CardDelegate({PlanModel::LinesRole, PlanModel::FullLinesRole}, this)),
      m_left(new WrappedLabel),
      m_minutes(new QSlider(Qt::Horizontal)),
      m_wishes(menuButton(tr("Wishes"), tr("Positions that the patient takes, techniques that are not wanted"))),
      m_unwanted(new QMenu(tr("Not wanted today"), m_wishes->menu())),
      m_notice(new WrappedLabel),
      m_sum(hint()),
      m_view(new QListView),
      m_pin(pushButton(tr("Pin"))),
      m_earlier(pushButton(tr("Earlier"))),
      m_later(pushButton(tr("Later"))),
      m_drop(pushButton(tr("Drop"))),
      m_technique(menuButton(tr("Technique"), tr("Another technique for the chosen step, or none of this one today"))),
      m_treat(pushButton(tr("Treat")))
{
    makeColumn();
    makeWishes();
    makeKeys();
    m_keeping.setSingleShot(true);
    m_keeping.setInterval(restBeforeKeeping);
    connect(&m_keeping, &QTimer::timeout, this, &PlanPanel::keepWish);
    connect(&session, &VisitSession::leaving, this, &PlanPanel::keepWish);
    connect(m_minutes, &QSlider::valueChanged, this, [this](int minutes) {
        m_wish.minutes = minutes;
        m_keeping.start();
        refresh();
    });
    connect(m_pin, &QPushButton::clicked, this, &PlanPanel::pin);
    connect(m_drop, &QPushButton::clicked, this, &PlanPanel::drop);
    connect(m_earlier, &QPushButton::clicked, this, [this] { move(-1); });
    connect(m_later, &QPushButton::clicked, this, [this] { move(1); });
    connect(m_treat, &QPushButton::clicked, this, &PlanPanel::treatWanted);
    connect(&session, &VisitSession::treatmentChanged, this, &PlanPanel::tellButtons);
    connect(m_technique->menu(), &QMenu::aboutToShow, this, &PlanPanel::fillTechniques);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex &now) {
        if (!m_filling)
            choose(now.row());
    });
    connect(&session, &VisitSession::visitOpened, this, &PlanPanel::takeWish);
    connect(&session, &VisitSession::planChanged, this, &PlanPanel::takeWish);
    connect(&session, &VisitSession::findingsChanged, this, &PlanPanel::refresh);
    connect(&session, &VisitSession::intakeChanged, this, &PlanPanel::refresh);
    takeWish();
}

void PlanPanel::makeColumn()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    m_left->setProperty("role", QStringLiteral("head"));
    m_notice->setProperty("role", QStringLiteral("head"));
    m_minutes->setRange(fewestMinutes, mostMinutes);
    m_minutes->setPageStep(5);
    m_minutes->setMinimumHeight(touchTarget);
    m_minutes->setAccessibleName(tr("Minutes until the patient leaves"));
    m_view->setAccessibleName(tr("The plan, step by step"));
    m_view->setModel(m_model);
    m_view->setWordWrap(true);
    m_view->setResizeMode(QListView::Adjust);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setItemDelegate(m_delegate);
    m_pin->setAccessibleName(tr("Keep the chosen step in the plan"));
    m_pin->setToolTip(tr("Keep the chosen step in the plan (P)"));
    m_earlier->setAccessibleName(tr("Work the chosen step earlier"));
    m_earlier->setToolTip(tr("Work the chosen step earlier (Alt+Up)"));
    m_later->setAccessibleName(tr("Work the chosen step later"));
    m_later->setToolTip(tr("Work the chosen step later (Alt+Down)"));
    m_drop->setAccessibleName(tr("Take the chosen step out of the plan"));
    m_drop->setToolTip(tr("Take the chosen step out of the plan, or back into it (D)"));

    auto *time = new QHBoxLayout;
    time->setSpacing(6);
    time->addWidget(m_left, 1);
    m_wishes->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    time->addWidget(m_wishes);
    column->addLayout(time);
    auto *begin = new QHBoxLayout;
    begin->setSpacing(6);
    begin->addWidget(m_minutes, 1);
    m_treat->setToolTip(tr("A screen for oiled hands, one step at a time, by one pedal or key (R)"));
    begin->addWidget(m_treat);
    column->addLayout(begin);
    column->addWidget(m_notice);
    column->addWidget(m_sum);
    column->addWidget(m_view, 1);
    auto *first = new QHBoxLayout;
    auto *second = new QHBoxLayout;
    for (QPushButton *button : {m_pin, m_earlier, m_later})
        first->addWidget(button, 1);
    second->addWidget(m_drop, 1);
    second->addWidget(m_technique, 2);
    for (QHBoxLayout *row : {first, second}) {
        row->setSpacing(6);
        column->addLayout(row);
    }
    column->addWidget(hint(tr("The best use of the minutes by what was found and by usual doses. Assists a trained practitioner; "
                              "follow local law, scope of practice and licensed care.")));
}

void PlanPanel::makeWishes()
{
    QMenu *menu = m_wishes->menu();
    menu->addSection(tr("Positions that are open"));
    for (const auto &[position, word] : positionWords) {
        QAction *action = menu->addAction(capitalised(words(positionInWords(position))));
        action->setCheckable(true);
        m_open.emplace_back(position, action);
        connect(action, &QAction::triggered, this, [this, position = position](bool isOpen) {
            if (isOpen)
                m_wish.barred.erase(position);
            else
                m_wish.barred.insert(position);
            keepWish();
        });
    }
    menu->addSeparator();
    menu->addMenu(m_unwanted);
    connect(m_unwanted, &QMenu::aboutToShow, this, [this] {
        m_unwanted->clear();
        for (const Technique &technique : m_session.handTechniques().all) {
            QAction *action = m_unwanted->addAction(capitalised(words(technique.name)));
            action->setCheckable(true);
            action->setChecked(m_wish.refused.contains(technique.id));
            connect(action, &QAction::triggered, this, [this, id = technique.id](bool isUnwanted) {
                if (isUnwanted)
                    m_wish.refused.insert(id);
                else
                    m_wish.refused.erase(id);
                keepWish();
            });
        }
    });
    menu->addSeparator();
    menu->addAction(tr("Take back what was changed by hand"), this, [this] {
        m_wish.pinned.clear();
        m_wish.dropped.clear();
        m_wish.byHand.clear();
        m_wish.ordered.clear();
        keepWish();
    });
}

void PlanPanel::makeKeys()
{
    const auto on = [this](const QKeySequence &keys, auto slot) {
        auto *key = new QShortcut(keys, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
        connect(key, &QShortcut::activated, this, slot);
    };
    on(QKeySequence(Qt::ALT | Qt::Key_Up), [this] { move(-1); });
    on(QKeySequence(Qt::ALT | Qt::Key_Down), [this] { move(1); });
}

void PlanPanel::setTheme(const Theme &theme)
{
    m_delegate->setTheme(theme);
    m_notice->setStyleSheet(QStringLiteral("color: %1;").arg(theme.tender.name()));
    m_view->viewport()->update();
}

void PlanPanel::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    refresh();
}

void PlanPanel::takeWish()
{
    m_keeping.stop();
    m_wish = m_session.visit().plan;
    const QSignalBlocker quiet(m_minutes);
    m_minutes->setValue(m_wish.minutes.value_or(PlanWish::usualMinutes));
    for (const auto &[position, action] : m_open)
        action->setChecked(!m_wish.barred.contains(position));
    const bool canChange = m_session.visitId() != 0 && !m_session.isReadOnly();
    m_minutes->setEnabled(canChange);
    m_wishes->setEnabled(canChange);
    refresh();
}

void PlanPanel::keepWish()
{
    m_keeping.stop();
    m_session.setPlanWish(m_wish);
}

void PlanPanel::refresh()
{
    if (!isVisible())
        return; // what nobody sees is not planned
    PlanRequest request;
    request.wish = m_wish;
    request.preferences = m_settings.preferences();
    request.preferences.techniques = m_session.techniques();
    request.earlier = earlierWork(m_session.pastTreatments());
    const auto planned = m_session.planner().plan(m_session.asSuspected(), request, "visit");
    m_filling = true;
    m_model->show(planned ? planned.value() : SessionPlan{}, m_wish);
    for (int row = 0; row < m_model->rowCount(); ++row)
        if (m_chosen && m_model->place(row) == m_chosen)
            m_view->setCurrentIndex(m_model->index(row));
    if (!m_view->currentIndex().isValid())
        m_chosen.reset();
    m_filling = false;
    tellPlan(planned);
    tellButtons();
    Q_EMIT planShown();
}

void PlanPanel::tellPlan(const Result<SessionPlan> &planned)
{
    m_left->say(tr("%1 min until the patient leaves").arg(m_minutes->value()));
    QStringList notices;
    if (!planned)
        notices << errorText(planned.error());
    const SessionPlan &plan = m_model->plan();
    for (const std::string &told : plan.told)
        notices << words(told);
    m_notice->say(notices.join(QLatin1Char('\n')));
    m_notice->setVisible(!notices.isEmpty());
    QStringList lines;
    if (m_session.visitId() == 0)
        lines << tr("No visit is open.");
    else if (plan.steps.empty() && plan.left.empty() && notices.isEmpty())
        lines << tr("Nothing was found yet.");
    else if (!plan.steps.empty())
        lines << tr("%1 for the steps, %2 kept for greeting, undressing, retest and rising slowly.")
                     .arg(words(minutesInWords(plan.seconds)), words(minutesInWords(plan.reserved)));
    else if (notices.isEmpty())
        lines << tr("No step fits; %1 are kept for greeting, undressing, retest and rising slowly.")
                     .arg(words(minutesInWords(plan.reserved)));
    if (!plan.isProved())
        lines << tr("Not proved best: another plan could be worth up to %1 % more.")
                     .arg(static_cast<int>(std::ceil(100.0 * (plan.bound - plan.value) / std::max(1, plan.value))));
    m_sum->say(lines.join(QLatin1Char('\n')));
}

int PlanPanel::row() const
{
    return m_view->currentIndex().row();
}

void PlanPanel::tellButtons()
{
    const bool canChange = m_session.visitId() != 0 && !m_session.isReadOnly();
    const PlannedStep *step = m_model->step(row());
    const bool isDropped = m_chosen && m_wish.dropped.contains(*m_chosen);
    const bool isPinned = m_chosen && m_wish.pinned.contains(*m_chosen);
    m_pin->setEnabled(canChange && m_chosen && (step || isPinned || !isDropped));
    m_pin->setText(isPinned ? tr("Unpin") : tr("Pin"));
    m_drop->setEnabled(canChange && m_chosen && (step || isDropped));
    m_drop->setText(isDropped ? tr("Take back") : tr("Drop"));
    m_earlier->setEnabled(canChange && step && m_model->step(row() - 1));
    m_later->setEnabled(canChange && step && m_model->step(row() + 1));
    m_technique->setEnabled(canChange && m_chosen && !isDropped);
    const bool isBegun = isOpen(m_session.visit().treatment);
    m_treat->setText(isBegun ? tr("Go on") : tr("Treat"));
    m_treat->setAccessibleName(isBegun ? tr("Go on with the treatment") : tr("Treat by this plan"));
    m_treat->setEnabled(canChange && (isBegun || !m_model->plan().steps.empty()));
}

void PlanPanel::fillTechniques()
{
    QMenu *menu = m_technique->menu();
    menu->clear();
    if (!m_chosen)
        return;
    if (const PlannedStep *step = m_model->step(row())) {
        menu->addAction(
            tr("Patient says no: no %1 today", "a technique").arg(words(step->technique->name)), this, &PlanPanel::refuse);
        menu->addSeparator();
    }
    std::vector<Finding> here;
    for (const Finding &finding : m_session.visit().findings)
        if (finding.place == *m_chosen && finding.isFound())
            here.push_back(finding);
    const auto byHand = m_wish.byHand.find(*m_chosen);
    const auto offer = [&](const QString &text, const std::string &id) {
        QAction *action = menu->addAction(text, this, [this, id] {
            m_wish.byHand.erase(*m_chosen);
            if (!id.empty())
                m_wish.byHand.emplace(*m_chosen, id);
            keepWish();
        });
        action->setCheckable(true);
        action->setChecked(byHand == m_wish.byHand.end() ? id.empty() : byHand->second == id);
    };
    offer(tr("As it suits what was found"), {});
    for (const Technique *technique :
        techniquesFor(m_session.handTechniques(), m_session.knowledge().atlas->at(m_chosen->structure), here))
        offer(capitalised(words(technique->name)), technique->id);
}

void PlanPanel::choose(int row)
{
    m_chosen = m_model->place(row);
    tellButtons();
    m_view->doItemsLayout(); // the chosen row opens
    if (m_chosen)
        Q_EMIT chosen(*m_chosen);
}

void PlanPanel::pin()
{
    if (!m_pin->isEnabled())
        return;
    m_wish.dropped.erase(*m_chosen);
    if (m_wish.pinned.erase(*m_chosen) == 0)
        m_wish.pinned.insert(*m_chosen);
    keepWish();
}

void PlanPanel::drop()
{
    if (!m_drop->isEnabled())
        return;
    m_wish.pinned.erase(*m_chosen);
    if (m_wish.dropped.erase(*m_chosen) == 0)
        m_wish.dropped.insert(*m_chosen);
    keepWish();
}

void PlanPanel::move(int by)
{
    if (!(by < 0 ? m_earlier : m_later)->isEnabled())
        return;
    const Place &place = m_model->step(row())->place;
    const Place &other = m_model->step(row() + by)->place;
    const std::pair wanted = by < 0 ? std::pair(place, other) : std::pair(other, place);
    std::erase(m_wish.ordered, wanted);
    std::erase(m_wish.ordered, std::pair(wanted.second, wanted.first));
    m_wish.ordered.insert(m_wish.ordered.begin(), wanted);
    keepWish();
}

void PlanPanel::refuse()
{
    const PlannedStep *step = m_model->step(row());
    if (!step || !m_technique->isEnabled())
        return;
    m_wish.byHand.erase(step->place);
    m_wish.refused.insert(step->technique->id);
    keepWish();
}

} // namespace raphe
