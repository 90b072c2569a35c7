// Says when nobody has touched the program for a while, and when the computer goes to sleep or has slept: then a practice locks.
// A view in which the hands are busy elsewhere may suspend the idle part.
#pragma once

#include <QObject>
#include <QTimer>

#include <chrono>
#include <functional>

namespace raphe {

class IdleWatch : public QObject {
    Q_OBJECT

public:
    /// `idle`: 0 never. `asleep`: how long this computer has slept since it was started; another clock in tests.
    explicit IdleWatch(std::chrono::milliseconds idle, QObject *parent = nullptr,
        std::function<std::chrono::milliseconds()> asleep = timeAsleep);

    void setIdle(std::chrono::milliseconds idle);
    /// Until resume(), as often as it was suspended.
    void suspend();
    void resume();

    /// From the two clocks that count and do not count sleep.
    [[nodiscard]] static std::chrono::milliseconds timeAsleep();

Q_SIGNALS:
    void lockWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    Q_SLOT void prepareForSleep(bool starts); // called over D-Bus
    void touched();
    void lookForSleep();

    std::chrono::milliseconds m_idle;
    std::function<std::chrono::milliseconds()> m_asleep;
    std::chrono::milliseconds m_sleptBefore;
    int m_suspended = 0;
    QTimer m_timer;
    QTimer m_sleepTimer;
};

} // namespace raphe
