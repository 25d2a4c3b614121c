#include "app/system/sleep_inhibitor.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>

namespace bathside::app {

SleepInhibitor::SleepInhibitor(QDBusConnection bus) : m_bus(std::move(bus)) {}

void SleepInhibitor::hold(const QString& why)
{
    if (m_wanted || !m_bus.isConnected())
        return;
    m_wanted = true;
    auto call = QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.login1"), QStringLiteral("/org/freedesktop/login1"),
        QStringLiteral("org.freedesktop.login1.Manager"), QStringLiteral("Inhibit"));
    call << QStringLiteral("sleep:idle:handle-lid-switch") << QStringLiteral("Bathside") << why
         << QStringLiteral("block");
    auto* watcher = new QDBusPendingCallWatcher(m_bus.asyncCall(call), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this,
            [this](QDBusPendingCallWatcher* done) {
                answered(done->reply());
                done->deleteLater();
            });
}

void SleepInhibitor::answered(const QDBusMessage& answer)
{
    const bool given = answer.type() == QDBusMessage::ReplyMessage && !answer.arguments().isEmpty();
    if (!given) {
        m_wanted = false;  // the next hold() asks again
        return;
    }
    if (!m_wanted)
        return;  // released meanwhile: the descriptor is closed with the answer
    m_lock = answer.arguments().constFirst().value<QDBusUnixFileDescriptor>();
    emit changed();
}

void SleepInhibitor::release()
{
    m_wanted = false;
    if (!m_lock.isValid())
        return;
    m_lock = QDBusUnixFileDescriptor();
    emit changed();
}

}  // namespace bathside::app
