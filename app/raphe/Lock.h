// Locks the program: on demand, when idle, on sleep. Saves first; when that fails the window is covered, so that nobody reads
// it, and stays until the words are saved or given up.
#pragma once

#include "app/raphe/MainWindow.h"
#include "app/raphe/practice/IdleWatch.h"

namespace raphe {

class Lock : public QObject {
    Q_OBJECT

public:
    /// What QApplication::exec() returns when the program is to be locked.
    static constexpr int exitCode = 77;

    Lock(VisitSession &session, MainWindow &window);

    /// For a view that is used without touching the computer.
    [[nodiscard]] IdleWatch &idleWatch() { return m_idle; }
    void lock();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void readSettings();
    void cover(const QString &reason);

    VisitSession &m_session;
    MainWindow &m_window;
    IdleWatch m_idle;
    QWidget *m_cover = nullptr;
};

} // namespace raphe
