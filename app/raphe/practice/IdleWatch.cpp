#include "app/raphe/practice/IdleWatch.h"

#include <QCoreApplication>
#include <QDBusConnection>
#include <QEvent>

#include <ctime>

namespace raphe {

namespace {

using std::chrono::milliseconds;

constexpr milliseconds sleepLook{2000}; // how often the clocks are compared; our choice
constexpr milliseconds leastSleep{1000}; // less is the clocks' own drift

milliseconds read(clockid_t clock)
{
    timespec time{};
    clock_gettime(clock, &time);
    return milliseconds(time.tv_sec * 1000 + time.tv_nsec / 1'000'000);
}

} // namespace

milliseconds IdleWatch::timeAsleep()
{
    return read(CLOCK_BOOTTIME) - read(CLOCK_MONOTONIC);
}

IdleWatch::IdleWatch(milliseconds idle, QObject *parent, std::function<milliseconds()> asleep)
    : QObject(parent), m_idle(idle), m_asleep(std::move(asleep)), m_sleptBefore(m_asleep())
{
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &IdleWatch::lockWanted);
    connect(&m_sleepTimer, &QTimer::timeout, this, &IdleWatch::lookForSleep);
    m_sleepTimer.start(sleepLook);
    QCoreApplication::instance()->installEventFilter(this);
    // Systems with logind say it before they sleep; elsewhere the clocks show it afterwards.
    QDBusConnection::systemBus().connect(QStringLiteral("org.freedesktop.login1"), QStringLiteral("/org/freedesktop/login1"),
        QStringLiteral("org.freedesktop.login1.Manager"), QStringLiteral("PrepareForSleep"), this, SLOT(prepareForSleep(bool)));
    touched();
}

void IdleWatch::setIdle(milliseconds idle)
{
    m_idle = idle;
    touched();
}

void IdleWatch::suspend()
{
    ++m_suspended;
    touched();
}

void IdleWatch::resume()
{
    --m_suspended;
    touched();
}

void IdleWatch::touched()
{
    if (m_idle.count() > 0 && m_suspended == 0)
        m_timer.start(m_idle);
    else
        m_timer.stop();
}

void IdleWatch::lookForSleep()
{
    const milliseconds slept = m_asleep();
    if (slept - m_sleptBefore >= leastSleep)
        Q_EMIT lockWanted();
    m_sleptBefore = slept;
}

void IdleWatch::prepareForSleep(bool starts)
{
    if (starts)
        Q_EMIT lockWanted();
}

bool IdleWatch::eventFilter(QObject *watched, QEvent *event)
{
    switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::Wheel:
    case QEvent::TabletPress:
    case QEvent::TabletMove:
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate: touched(); break;
    default: break;
    }
    return QObject::eventFilter(watched, event);
}

} // namespace raphe
