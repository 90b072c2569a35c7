#include "app/raphe/ReasonPanel.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/words/ErrorText.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QMouseEvent>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace raphe {

ReasonPanel::ReasonPanel(VisitSession &session, Settings &settings, QWidget *parent)
    : QWidget(parent),
      m_session(session),
      m_settings(settings),
      m_delegate(new CardDelegate({ReasonModel::LinesRole, ReasonModel::FullLinesRole, -1, -1, -1, ReasonModel::BarRole}, this)),
      m_notice(new WrappedLabel),
      m_pin(new QPushButton(tr("Pin"))),
      m_dismiss(new QPushButton(tr("Dismiss ...")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    m_notice->setProperty("role", QStringLiteral("head"));
    column->addWidget(m_notice);

    m_lists = {makeList(AdviceList::Explain, tr("Would explain it"), tr("What would explain the findings")),
        makeList(AdviceList::Check, tr("Check next"), tr("What to check next")),
        makeList(AdviceList::Treat, tr("Treat first"), tr("What to treat first"))};

    auto *order = new QToolButton;
    order->setText(tr("Order"));
    order->setAccessibleName(tr("What comes first in treatment"));
    order->setPopupMode(QToolButton::InstantPopup);
    order->setMinimumHeight(touchTarget);
    auto *menu = new QMenu(order);
    const auto prefer = [&](const QString &text, bool Preferences::*which) {
        QAction *action = menu->addAction(text);
        action->setCheckable(true);
        action->setChecked(m_settings.preferences().*which);
        connect(action, &QAction::toggled, this, [this, which](bool on) {
            Preferences preferences = m_settings.preferences();
            preferences.*which = on;
            m_settings.setPreferences(preferences);
            refresh();
        });
    };
    prefer(tr("Where it hurts first"), &Preferences::complaintFirst);
    prefer(tr("Joints before the muscles across them"), &Preferences::jointFirst);
    order->setMenu(menu);

    auto *buttons = new QHBoxLayout;
    buttons->setSpacing(6);
    m_pin->setToolTip(tr("Keep the chosen row at the top (P)"));
    m_pin->setAccessibleName(tr("Pin the chosen row"));
    m_dismiss->setToolTip(tr("Put the chosen row away, with the reason (D)"));
    m_dismiss->setAccessibleName(tr("Dismiss the chosen row"));
    for (QPushButton *button : {m_pin, m_dismiss}) {
        button->setMinimumHeight(touchTarget);
        buttons->addWidget(button, 1);
    }
    auto *pass = new QPushButton(tr("Pass"));
    pass->setAccessibleName(tr("Pass over what to check, with two pedals"));
    pass->setToolTip(tr("Go over what to check with two pedals or keys, spoken (G)"));
    pass->setMinimumHeight(touchTarget);
    connect(pass, &QPushButton::clicked, this, [this] { Q_EMIT passWanted(placesToCheck()); });
    buttons->addWidget(pass, 1);
    buttons->addWidget(order);
    column->addLayout(buttons);

    auto *limits =
        new WrappedLabel(tr("Order and bars of a model, not chances and no diagnosis. Assists a trained practitioner; follow "
                            "local law, scope of practice and licensed care."));
    limits->setProperty("role", QStringLiteral("quiet"));
    column->addWidget(limits);

    connect(m_pin, &QPushButton::clicked, this, &ReasonPanel::pin);
    connect(m_dismiss, &QPushButton::clicked, this, &ReasonPanel::dismiss);
    connect(&session, &VisitSession::findingsChanged, this, &ReasonPanel::refresh);
    connect(&session, &VisitSession::visitOpened, this, [this] {
        m_chosen.reset();
        for (const List &list : m_lists)
            list.view->scrollToTop();
    });
    refresh();
}

ReasonPanel::List ReasonPanel::makeList(AdviceList list, const QString &title, const QString &name)
{
    List made{new ReasonModel(*m_session.knowledge().atlas, list, this), new QListView, new QLabel(title)};
    made.heading->setProperty("role", QStringLiteral("head"));
    made.view->setAccessibleName(name);
    made.view->setModel(made.model);
    made.view->setWordWrap(true);
    made.view->setResizeMode(QListView::Adjust);
    made.view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    made.view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    made.view->setMouseTracking(true);
    made.view->setItemDelegate(m_delegate);
    made.view->viewport()->installEventFilter(this);
    auto *column = qobject_cast<QVBoxLayout *>(layout());
    column->addWidget(made.heading);
    column->addWidget(made.view, 1);
    connect(made.view, &QListView::entered, this, [this, made](const QModelIndex &index) { look(made, index.row()); });
    connect(made.view->selectionModel(), &QItemSelectionModel::currentChanged, this, [this, made](const QModelIndex &now) {
        if (!m_filling)
            choose(made, now.row());
    });
    return made;
}

std::vector<Place> ReasonPanel::placesToCheck() const
{
    std::vector<Place> out;
    const ReasonModel &model = *m_lists[static_cast<std::size_t>(AdviceList::Check)].model;
    for (int row = 0; row < model.rowCount(); ++row)
        if (const Suggestion *check = model.suggestion(row))
            out.push_back(check->place);
    return out;
}

void ReasonPanel::setTheme(const Theme &theme)
{
    m_delegate->setTheme(theme);
    m_notice->setStyleSheet(QStringLiteral("color: %1;").arg(theme.tender.name()));
    for (const List &list : m_lists)
        list.view->viewport()->update();
}

void ReasonPanel::refresh()
{
    m_filling = true;
    Preferences preferences = m_settings.preferences();
    preferences.techniques = m_session.techniques();
    const auto advice = m_session.adviser().advise(m_session.asSuspected(), "visit", preferences);
    for (const List &list : m_lists) {
        if (advice)
            list.model->show(advice.value(), m_session.visit());
        else
            list.model->clear();
        if (m_chosen && m_chosen->first == list.model->list())
            for (int row = 0; row < list.model->rowCount(); ++row)
                if (const Suggestion *s = list.model->suggestion(row); s && s->place == m_chosen->second)
                    list.view->setCurrentIndex(list.model->index(row));
        if (!list.view->currentIndex().isValid() && m_chosen && m_chosen->first == list.model->list())
            m_chosen.reset();
    }
    QString notice;
    if (!advice)
        notice = errorText(advice.error());
    else if (!advice.value().general.empty()) {
        const CautionVerdict *lock = lockAmong(advice.value().general);
        const QString reason = QString::fromStdString((lock ? *lock : advice.value().general.front()).reason);
        notice = lock ? tr("STOP: %1").arg(reason) : tr("Caution: %1").arg(reason);
        QStringList others;
        for (const CautionVerdict &v : advice.value().general)
            others << QString::fromStdString(v.reason);
        m_notice->setToolTip(others.join(QStringLiteral("\n\n")));
    }
    m_notice->say(notice);
    m_notice->setVisible(!notice.isEmpty());
    m_filling = false;
    tellButtons();
}

void ReasonPanel::look(const List &list, int row)
{
    const Suggestion *s = list.model->suggestion(row);
    if (!s)
        return;
    std::vector<PathStep> path = s->path;
    if (path.empty()) // only the first rows bring theirs along
        if (auto ways = m_session.adviser().reasoner().ways(m_session.visit(), s->place, 1); !ways.empty())
            path = std::move(ways.front());
    std::vector<LitPlace> lit;
    for (std::size_t i = 0; i < path.size(); ++i)
        lit.push_back({path[i].to, static_cast<int>(i) + 1, path[i].evidence});
    if (path.empty())
        lit.push_back({s->place, 1, Grade::Verified});
    Q_EMIT shown(s->place, lit, path);
}

void ReasonPanel::choose(const List &list, int row)
{
    const Suggestion *s = list.model->suggestion(row);
    if (!s)
        return;
    const Place place = s->place;
    m_chosen = {list.model->list(), place};
    m_filling = true;
    for (const List &other : m_lists)
        if (other.view != list.view)
            other.view->selectionModel()->clear();
    m_filling = false;
    tellButtons();
    for (const List &each : m_lists)
        each.view->doItemsLayout(); // the chosen row opens, the others close
    Q_EMIT chosen(place);
    look(list, row);
}

void ReasonPanel::tellButtons()
{
    const Judgement *judgement = m_chosen ? m_session.judgementOf(m_chosen->first, m_chosen->second) : nullptr;
    m_pin->setEnabled(m_chosen.has_value());
    m_dismiss->setEnabled(m_chosen.has_value());
    m_pin->setText(judgement && judgement->isPinned() ? tr("Unpin") : tr("Pin"));
    m_dismiss->setText(judgement && !judgement->isPinned() ? tr("Take back") : tr("Dismiss ..."));
}

void ReasonPanel::pin()
{
    if (!m_chosen)
        return;
    const Judgement *judgement = m_session.judgementOf(m_chosen->first, m_chosen->second);
    if (judgement && judgement->isPinned())
        m_session.withdrawJudgement(m_chosen->first, m_chosen->second);
    else
        m_session.judge({m_chosen->first, m_chosen->second, {}});
}

void ReasonPanel::dismiss()
{
    if (!m_chosen)
        return;
    const Judgement *judgement = m_session.judgementOf(m_chosen->first, m_chosen->second);
    if (judgement && !judgement->isPinned()) {
        m_session.withdrawJudgement(m_chosen->first, m_chosen->second);
        return;
    }
    bool ok = false;
    const QString reason =
        QInputDialog::getText(this, tr("Dismiss"), tr("Why is it put away? It stays in the record."), QLineEdit::Normal, {}, &ok);
    if (ok && !reason.trimmed().isEmpty())
        m_session.judge({m_chosen->first, m_chosen->second, reason.trimmed().toStdString()});
}

bool ReasonPanel::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::Leave)
        Q_EMIT left();
    return QWidget::eventFilter(watched, event);
}

} // namespace raphe
