// The help of the window: its key, its button, and the page that fits where the user is.
#include "app/raphe/MainWindow.h"

#include "app/raphe/help/Help.h"

#include <QAction>
#include <QApplication>
#include <QStackedWidget>
#include <QTabWidget>
#include <QToolButton>

namespace raphe {

void MainWindow::makeHelp(QToolButton *button)
{
    auto *action = new QAction(tr("Help"), this);
    action->setShortcut(Qt::Key_F1);
    addAction(action);
    connect(action, &QAction::triggered, this, [this] { m_help->openAt(helpTopic(), *this); });
    connect(button, &QToolButton::clicked, action, &QAction::trigger);
    connect(m_help, &Help::failed, this, &MainWindow::tell);
    connect(m_help, &Help::lockWanted, this, &MainWindow::lockWanted);
}

QString MainWindow::helpTopic() const
{
    const QWidget *focus = QApplication::focusWidget();
    const auto isIn = [focus](const QWidget *part) { return focus && part->isAncestorOf(focus); };
    if (isIn(m_line))
        return QStringLiteral("typed-line");
    if (isIn(m_banner))
        return QStringLiteral("cautions");
    switch (middle()) {
    case Middle::Intake: return QStringLiteral("intake");
    case Middle::Examine: return QStringLiteral("examination");
    case Middle::Retest: return QStringLiteral("retest");
    case Middle::Close: return QStringLiteral("close");
    case Middle::Body: break;
    }
    if (m_session.visitId() == 0)
        return QStringLiteral("index");
    if (isIn(m_tracePanel) || isIn(m_cardPanel))
        return QStringLiteral("evidence");
    if (isPlanning())
        return QStringLiteral("plan");
    return m_visitTabs->currentWidget() == m_reasonPanel ? QStringLiteral("reasoning") : QStringLiteral("examination");
}

} // namespace raphe
