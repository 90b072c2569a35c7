// The wait after wrong passphrases: how long it still is, told five times a second. Lives in the window's thread.
#pragma once

#include <QDeadlineTimer>
#include <QTimer>

namespace raphe {

class TryDelay : public QObject {
    Q_OBJECT

public:
    explicit TryDelay(QObject *parent = nullptr);

    /// As long as so many wrong tries in a row ask for (unlockDelay); false when that is not at all.
    bool begin(int failures);
    void stop();
    [[nodiscard]] bool isWaiting() const { return secondsLeft() > 0; }
    /// Whole seconds, upwards; 0 when it is over.
    [[nodiscard]] qint64 secondsLeft() const { return (m_until.remainingTime() + 999) / 1000; }

Q_SIGNALS:
    /// Each time that it was looked at; with 0 for the last time.
    void told(qint64 secondsLeft);

private:
    void tell();

    QDeadlineTimer m_until;
    QTimer m_tick;
};

} // namespace raphe
