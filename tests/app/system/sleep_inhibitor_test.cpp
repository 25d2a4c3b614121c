#include "app/system/sleep_inhibitor.h"

#include <QDBusContext>
#include <QDBusError>
#include <QSignalSpy>
#include <QTest>
#include <array>
#include <cerrno>

#include <fcntl.h>
#include <gtest/gtest.h>
#include <unistd.h>

namespace bathside::app {
namespace {

const QString kManager = QStringLiteral("the login manager's connection");

// The login manager's side of org.freedesktop.login1(5): `Inhibit` gives a descriptor, and the
// machine is kept awake until the last copy of it is closed, which the other end of a pipe shows.
class LoginManager final : public QObject, protected QDBusContext {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.login1.Manager")

public:
    LoginManager()
    {
        auto bus = QDBusConnection::connectToBus(QDBusConnection::SessionBus, kManager);
        bus.registerObject(QStringLiteral("/org/freedesktop/login1"), this,
                           QDBusConnection::ExportScriptableSlots);
        EXPECT_TRUE(bus.registerService(QStringLiteral("org.freedesktop.login1")));
    }
    ~LoginManager() override { QDBusConnection::disconnectFromBus(kManager); }

    bool refuses = false;
    QStringList asked;

    [[nodiscard]] bool keepsAwake() const
    {
        char nothing{};
        return m_readEnd >= 0 && read(m_readEnd, &nothing, 1) < 0 && errno == EAGAIN;
    }

public slots:
    Q_SCRIPTABLE QDBusUnixFileDescriptor Inhibit(const QString& what, const QString& who,
                                                 const QString& why, const QString& mode)
    {
        asked = {what, who, why, mode};
        if (refuses) {
            sendErrorReply(QDBusError::AccessDenied, QStringLiteral("not today"));
            return {};
        }
        std::array<int, 2> ends{};
        EXPECT_EQ(pipe2(ends.data(), O_CLOEXEC | O_NONBLOCK), 0);
        m_readEnd = ends[0];
        QDBusUnixFileDescriptor given;
        given.giveFileDescriptor(ends[1]);
        return given;
    }

private:
    int m_readEnd = -1;
};

class SleepInhibitorTest : public testing::Test {
protected:
    LoginManager m_manager;
    SleepInhibitor m_inhibitor{QDBusConnection::sessionBus()};
    QSignalSpy m_changed{&m_inhibitor, &SleepInhibitor::changed};
};

TEST_F(SleepInhibitorTest, keepsTheMachineAwakeUntilReleased)
{
    m_inhibitor.hold(QStringLiteral("A pull is running"));
    ASSERT_TRUE(m_changed.wait());
    EXPECT_TRUE(m_inhibitor.isHeld());
    EXPECT_EQ(
        m_manager.asked,
        QStringList({QStringLiteral("sleep:idle:handle-lid-switch"), QStringLiteral("Bathside"),
                     QStringLiteral("A pull is running"), QStringLiteral("block")}));
    EXPECT_TRUE(QTest::qWaitFor([&] { return m_manager.keepsAwake(); }));

    m_inhibitor.release();
    EXPECT_FALSE(m_inhibitor.isHeld());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !m_manager.keepsAwake(); }));
}

TEST_F(SleepInhibitorTest, asksOnceWhileHeld)
{
    m_inhibitor.hold(QStringLiteral("first"));
    ASSERT_TRUE(m_changed.wait());
    m_inhibitor.hold(QStringLiteral("second"));
    EXPECT_EQ(m_manager.asked.value(2), QStringLiteral("first"));
    EXPECT_TRUE(m_inhibitor.isHeld());
}

TEST_F(SleepInhibitorTest, isNotHeldWhenReleasedBeforeTheAnswer)
{
    m_inhibitor.hold(QStringLiteral("a pull that was over at once"));
    m_inhibitor.release();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !m_manager.asked.isEmpty(); }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !m_manager.keepsAwake(); }));
    EXPECT_FALSE(m_inhibitor.isHeld());
}

TEST_F(SleepInhibitorTest, asksAgainAfterARefusal)
{
    m_manager.refuses = true;
    m_inhibitor.hold(QStringLiteral("refused"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !m_manager.asked.isEmpty(); }));
    EXPECT_FALSE(m_inhibitor.isHeld());

    m_manager.refuses = false;
    EXPECT_TRUE(QTest::qWaitFor([&] {
        m_inhibitor.hold(QStringLiteral("asked again"));
        return m_inhibitor.isHeld();
    }));
}

TEST(SleepInhibitorWithoutBus, isSimplyNotHeld)
{
    SleepInhibitor inhibitor{QDBusConnection(QStringLiteral("no such bus"))};
    inhibitor.hold(QStringLiteral("nobody to ask"));
    EXPECT_FALSE(inhibitor.isHeld());
    inhibitor.release();
}

TEST(SleepInhibitorWithoutManager, isSimplyNotHeld)
{
    SleepInhibitor inhibitor{QDBusConnection::sessionBus()};
    inhibitor.hold(QStringLiteral("nobody to ask"));
    QCoreApplication::processEvents();
    EXPECT_FALSE(inhibitor.isHeld());
}

}  // namespace
}  // namespace bathside::app

#include "sleep_inhibitor_test.moc"
