#include "app/raphe/treatment/ScreenAwake.h"

#include <QCoreApplication>
#include <QDBusConnection>
#include <QDBusMessage>

namespace raphe {

namespace {

QDBusMessage call(const char *method)
{
    return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"),
        QStringLiteral("/org/freedesktop/ScreenSaver"), QStringLiteral("org.freedesktop.ScreenSaver"), QLatin1String(method));
}

constexpr int shortest = 300; // ms; a desktop that does not answer must not hold the work up

} // namespace

ScreenAwake::ScreenAwake()
{
    QDBusMessage inhibit = call("Inhibit");
    inhibit << QStringLiteral("Raphe") << QCoreApplication::translate("ScreenAwake", "Hands are busy with a treatment");
    const QDBusMessage answer = QDBusConnection::sessionBus().call(inhibit, QDBus::Block, shortest);
    if (answer.type() == QDBusMessage::ReplyMessage && !answer.arguments().isEmpty())
        m_cookie = answer.arguments().constFirst().toUInt();
}

ScreenAwake::~ScreenAwake()
{
    if (m_cookie == 0)
        return;
    QDBusMessage release = call("UnInhibit");
    release << m_cookie;
    QDBusConnection::sessionBus().send(release);
}

} // namespace raphe
