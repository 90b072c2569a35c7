#include "app/raphe/Lock.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/help/Help.h"
#include "app/words/ErrorText.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

Lock::Lock(VisitSession &session, MainWindow &window)
    : QObject(&window), m_session(session), m_window(window), m_idle(std::chrono::milliseconds(0), this)
{
    readSettings();
    connect(&window, &MainWindow::settingsChanged, this, &Lock::readSettings);
    connect(&window, &MainWindow::lockWanted, this, &Lock::lock);
    connect(&window, &MainWindow::treating, &m_idle, [this](bool isBusy) { isBusy ? m_idle.suspend() : m_idle.resume(); });
    connect(&m_idle, &IdleWatch::lockWanted, this, &Lock::lock);
}

void Lock::readSettings()
{
    const auto settings = m_session.practice().settings();
    m_idle.setIdle(std::chrono::minutes(settings ? settings.value().lockMinutes : PracticeSettings().lockMinutes));
}

void Lock::lock()
{
    m_window.help().close();
    Q_EMIT m_session.leaving();
    if (const auto saved = m_session.saveNow(); !saved) {
        cover(errorText(saved.error()));
        return;
    }
    QCoreApplication::exit(exitCode); // also out of open dialogs
}

void Lock::cover(const QString &reason)
{
    if (m_cover)
        m_cover->deleteLater();
    m_cover = new QWidget; // over everything, dialogs too, whose words are kept
    m_cover->setWindowTitle(tr("Raphe: not saved"));
    m_cover->setWindowModality(Qt::ApplicationModal);
    m_cover->setWindowFlag(Qt::WindowStaysOnTopHint);
    m_cover->installEventFilter(this);
    auto *column = new QVBoxLayout(m_cover);
    column->addStretch();
    column->addWidget(new WrappedLabel(tr("The program wants to lock, but the last words of the visit could not be saved:")));
    column->addWidget(new WrappedLabel(reason));
    column->addWidget(new WrappedLabel(tr("Free some space or mend the disk, then lock again. The words are kept until then.")));
    auto *row = new QHBoxLayout;
    auto *lose = new QPushButton(tr("Lock and lose them"));
    auto *again = new QPushButton(tr("Save and lock"));
    for (QPushButton *button : {lose, again}) {
        button->setMinimumHeight(touchTarget);
        row->addWidget(button);
    }
    column->addLayout(row);
    column->addStretch();
    connect(again, &QPushButton::clicked, this, &Lock::lock);
    connect(lose, &QPushButton::clicked, this, [] { QCoreApplication::exit(exitCode); });
    m_cover->showFullScreen();
    again->setFocus();
}

bool Lock::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_cover && event->type() == QEvent::Close) {
        event->ignore(); // only its two buttons take it away
        return true;
    }
    return QObject::eventFilter(watched, event);
}

} // namespace raphe
