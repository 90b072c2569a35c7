#include "app/raphe/practice/TryDelay.h"

#include "core/store/UnlockDelay.h"

namespace raphe {

TryDelay::TryDelay(QObject *parent) : QObject(parent)
{
    constexpr int tickMs = 200;
    m_tick.setInterval(tickMs);
    connect(&m_tick, &QTimer::timeout, this, &TryDelay::tell);
}

bool TryDelay::begin(int failures)
{
    const std::chrono::milliseconds delay = unlockDelay(failures);
    m_until = QDeadlineTimer(delay);
    if (delay.count() <= 0)
        return false;
    m_tick.start();
    return true;
}

void TryDelay::stop()
{
    m_tick.stop();
}

void TryDelay::tell()
{
    const qint64 left = secondsLeft();
    if (left <= 0)
        m_tick.stop();
    Q_EMIT told(left);
}

} // namespace raphe
