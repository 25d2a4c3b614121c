#include "app/station/session.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QFile>
#include <QTimer>

#include <gtest/gtest.h>

#include "core/base/simulated_clock.h"
#include "core/trail/store/check.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;

class Deaf final : public ui::Feedback {
public:
    void taken() override {}
    void refused() override {}
};

std::string defaultCard()
{
    QFile file(QStringLiteral(BATHSIDE_DEFAULT_CARD));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll().toStdString();
}

class SessionSealTest : public testing::Test {
protected:
    void open()
    {
        auto session = Session::open(
            {.trail = m_folder / "trail.db",
             .spoolFolder = m_folder.path(),
             .card = {},
             .defaultCard = defaultCard(),
             .rehearsal = false,
             .sealKey = m_folder / "seal.key",
             .clockSynchronised = true,
             .clockOffset = {}},
            {.clock = m_clock,
             .feedback = m_feedback,
             .inputTime = [this](std::uint64_t) { return ui::InputTime{.at = m_clock.now()}; },
             .ticking = ui::StationModel::Ticking::ByHand});
        ASSERT_TRUE(session) << session.error().toStdString();
        m_session = std::move(*session);
    }

    void say(const Intent& intent)
    {
        m_clock.runTo(m_clock.now().boot + 1s);
        ASSERT_TRUE(m_session->model().say(intent, 0, QStringLiteral("test")));
    }

    void aDay()
    {
        say(OpenShift{"Europe/Madrid", {"MK"}});
        say(CloseShift{});
    }

    bool isSealed() const
    {
        const Bench& bench = m_session->station().bench();
        return bench.sealed && *bench.sealed > bench.shift->closed->seq;
    }

    void waitForSeal()
    {
        QEventLoop loop;
        QTimer::singleShot(60s, &loop, &QEventLoop::quit);
        const auto heard =
            QObject::connect(&m_session->model(), &ui::StationModel::changed, &loop, [&] {
                if (isSealed())
                    loop.quit();
            });
        if (!isSealed())
            loop.exec();
        QObject::disconnect(heard);
        ASSERT_TRUE(isSealed());
    }

    Verification verified()
    {
        EXPECT_TRUE(m_session->store().flush(60s));
        auto answer = m_session->store()
                          .ask([](store::TrailDb& trail) -> Result<Verification, StoreTrouble> {
                              return store::check(trail, {}).chain;
                          })
                          .get();
        EXPECT_TRUE(answer);
        return answer.value_or(Verification{});
    }

    test::TempFolder m_folder;
    SimulatedClock m_clock{WallTime(1'772'690'400'000ms)};
    Deaf m_feedback;
    std::unique_ptr<Session> m_session;
};

TEST_F(SessionSealTest, sealsAShiftWhenItIsClosed)
{
    open();
    aDay();
    waitForSeal();
    const Verification found = verified();
    EXPECT_FALSE(found.flaw);
    EXPECT_FALSE(found.badSeal);
    EXPECT_EQ(found.seals, 1);
}

TEST_F(SessionSealTest, sealsOnceAndWithTheSameKeyAfterARestart)
{
    open();
    aDay();
    waitForSeal();
    m_session.reset();
    open();
    QCoreApplication::processEvents();
    EXPECT_EQ(verified().seals, 1);
    aDay();
    waitForSeal();
    EXPECT_EQ(verified().seals, 2);
    EXPECT_FALSE(verified().badSeal);
}

TEST_F(SessionSealTest, aSwappedKeyIsFound)
{
    open();
    aDay();
    waitForSeal();
    m_session.reset();
    std::filesystem::remove(m_folder / "seal.key");
    open();
    aDay();
    waitForSeal();
    ASSERT_TRUE(verified().badSeal);
    EXPECT_EQ(verified().badSeal->flaw, SealFlaw::OtherKey);
}

TEST_F(SessionSealTest, whatIsSaidHasTheNameOfItsTime)
{
    open();
    say(OpenShift{"Europe/Madrid", {"MK"}});
    ASSERT_TRUE(m_session->store().flush(60s));
    const Seq before = m_session->station().bench().lastSeq;
    m_session->call({"Bench 2"});
    say(MakeNote{"by another name"});
    EXPECT_EQ(m_session->name().text, "Bench 2");
    EXPECT_FALSE(verified().flaw);
    const auto named =
        m_session->store()
            .ask([](store::TrailDb& trail) -> Result<std::vector<std::string>, StoreTrouble> {
                std::vector<std::string> names;
                (void)trail.read(1, trail.head().seq, [&](const Entry& entry) {
                    names.push_back(entry.station.text);
                    return true;
                });
                return names;
            })
            .get();
    ASSERT_TRUE(named);
    std::vector<std::string> expected(static_cast<std::size_t>(before), "bench");
    expected.resize(named->size(), "Bench 2");
    EXPECT_EQ(*named, expected);
    EXPECT_GT(named->size(), static_cast<std::size_t>(before));
}

TEST_F(SessionSealTest, theBenchWorksWithoutAKey)
{
    std::filesystem::create_directory(m_folder / "seal.key");
    open();
    EXPECT_FALSE(m_session->sealTrouble().isEmpty());
    aDay();
    EXPECT_EQ(verified().seals, 0);
}

}  // namespace
}  // namespace bathside::app
