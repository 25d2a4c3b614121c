#pragma once

// Keeps the machine awake while a timed step runs, by asking the system's login manager.
//
// A request only: where there is no system bus, no login manager, or it says no, `isHeld()` stays
// false and nothing else happens. The time does not depend on it (the boot clock counts through
// sleep); the loudspeaker does. Never blocks. Lives on one thread with an event loop.
// Source: org.freedesktop.login1(5), Manager.Inhibit; the lock is the file descriptor it returns.

#include <QDBusConnection>
#include <QDBusUnixFileDescriptor>
#include <QObject>

namespace bathside::app {

class SleepInhibitor final : public QObject {
    Q_OBJECT

public:
    explicit SleepInhibitor(QDBusConnection bus = QDBusConnection::systemBus());

    [[nodiscard]] bool isHeld() const { return m_lock.isValid(); }

public slots:
    /// `why` is shown by the desktop to whoever asks what keeps it awake.
    void hold(const QString& why);
    void release();

signals:
    void changed();

private:
    void answered(const QDBusMessage& answer);

    QDBusConnection m_bus;
    QDBusUnixFileDescriptor m_lock;
    bool m_wanted = false;
};

}  // namespace bathside::app
