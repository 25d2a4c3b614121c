#include "ui/sound/alarm_thread.h"

#include <future>

#include <gtest/gtest.h>

#include "tests/ui/sound/stand_ins.h"

namespace bathside::ui {

namespace {

using std::chrono::hours;
using std::chrono::milliseconds;
using std::chrono::seconds;
using test::dueAt;
using test::FakeClock;
using test::FakeOut;
using test::FakeSpeaker;
using test::RealClock;
using test::Reports;

std::unique_ptr<Sounder> sounderWith(const std::shared_ptr<FakeSpeaker>& speaker)
{
    std::vector<std::unique_ptr<AudioOut>> paths;
    paths.push_back(std::make_unique<FakeOut>(speaker));
    return std::make_unique<Sounder>(std::move(paths));
}

// A clock that is stepped by hand.
struct SteppedAlarms : testing::Test {
    FakeClock clock;
    std::shared_ptr<FakeSpeaker> speaker = std::make_shared<FakeSpeaker>();
    Reports reports;
    AlarmThread thread{clock, sounderWith(speaker), Waiting::Poked, reports.notifier()};

    void step(Micros time)
    {
        clock.pass(time);
        thread.wake();
        thread.settle();
    }
};

TEST_F(SteppedAlarms, soundsWhenTheClockGetsThere)
{
    thread.publish(dueAt(clock.now().boot + seconds{90}, Level::Limit, "pull 3"));
    step(seconds{90} - Micros{1});
    EXPECT_EQ(speaker->alarms(), 0U);
    step(Micros{1});
    EXPECT_EQ(speaker->alarms(), 1U);
    reports.take(thread);
    EXPECT_EQ(reports.count<report::AlarmRaised>(), 1U);
    EXPECT_EQ(reports.count<report::AlarmSounded>(), 1U);
}

TEST_F(SteppedAlarms, aPublishedSourceIsAskedAtOnce)
{
    thread.publish(dueAt(clock.now().boot, Level::HeadsUp));
    thread.settle();
    EXPECT_EQ(speaker->alarms(), 1U);
    thread.publish(nullptr);
    thread.settle();
    EXPECT_EQ(speaker->silenced, 1);
}

TEST_F(SteppedAlarms, cuesArePlayedInTheirOrder)
{
    thread.click();
    thread.refuse();
    thread.test();
    thread.settle();
    const std::scoped_lock lock(speaker->mutex);
    ASSERT_EQ(speaker->played.size(), 3U);
    EXPECT_EQ(speaker->played[0].second->samples, burstOf(Cue::Click).samples);
    EXPECT_EQ(speaker->played[1].second->samples, burstOf(Cue::Refusal).samples);
    EXPECT_EQ(speaker->played[2].second->samples, burstOf(Cue::Test).samples);
}

TEST_F(SteppedAlarms, aLostDeviceIsReportedWithoutAStepOfTheClock)
{
    thread.settle();
    speaker->afterOpen = OutState::Failed;
    speaker->become(OutState::Failed, OutFault::WriteLost);
    const auto lost = reports.next<report::SoundLost>(thread);
    ASSERT_TRUE(lost);
    EXPECT_EQ(lost->device, "speaker");
    EXPECT_EQ(thread.output().state, OutState::Failed);
}

TEST_F(SteppedAlarms, aStepOfWallTimeIsReportedAndNoAlarm)
{
    thread.settle();
    clock.setWall(-hours{1});
    step(seconds{1});
    const auto stepped = reports.next<report::ClockStepped>(thread);
    ASSERT_TRUE(stepped);
    EXPECT_EQ(stepped->by, -hours{1});
    clock.setWall(milliseconds{500});  // a time service pulls
    step(seconds{1});
    reports.take(thread);
    EXPECT_EQ(reports.count<report::ClockStepped>(), 1U);
    EXPECT_EQ(speaker->alarms(), 0U);
}

TEST_F(SteppedAlarms, aStepOfWallTimeMovesNoDeadline)
{
    thread.publish(dueAt(clock.now().boot + seconds{60}, Level::Limit));
    clock.setWall(hours{2});
    step(seconds{59});
    EXPECT_EQ(speaker->alarms(), 0U);
    step(seconds{1});
    EXPECT_EQ(speaker->alarms(), 1U);
}

TEST_F(SteppedAlarms, holdsTheVolumeAndGivesItFree)
{
    thread.holdVolume(0.6);
    thread.settle();
    EXPECT_EQ(speaker->held, 0.6);
    thread.holdVolume(std::nullopt);
    thread.settle();
    EXPECT_EQ(speaker->held, std::nullopt);
}

// The kernel's clock: nobody pokes, and the alarm comes, not early.
TEST(AlarmThreadTest, waitsByItselfAndIsNeverEarly)
{
    const RealClock clock;
    const auto speaker = std::make_shared<FakeSpeaker>();
    Reports reports;
    AlarmThread thread(clock, sounderWith(speaker), Waiting::BootClock, reports.notifier());
    for (int i = 0; i < 100; ++i) {
        const BootTime due = bootNow() + Micros{3'000 + 71 * i};
        thread.publish(dueAt(due, Level::Limit, std::to_string(i)));
        const auto sounded = reports.next<report::AlarmSounded>(thread);
        ASSERT_TRUE(sounded);
        EXPECT_EQ(sounded->alarm, std::to_string(i));
        EXPECT_GE(sounded->at.boot, due);
        EXPECT_EQ(sounded->late, sounded->at.boot - due);
    }
}

// The window's thread is stuck and reads no report: the alarm comes all the same.
TEST(AlarmThreadTest, doesNotWaitForWhoeverTakesTheReports)
{
    const RealClock clock;
    const auto speaker = std::make_shared<FakeSpeaker>();
    std::promise<void> told;
    std::once_flag once;
    AlarmThread thread(clock, sounderWith(speaker), Waiting::BootClock, [&] {
        if (speaker->alarms() > 0)
            std::call_once(once, [&] { told.set_value(); });
    });
    thread.publish(dueAt(bootNow() + milliseconds{20}, Level::Overrun));
    EXPECT_EQ(told.get_future().wait_for(seconds{10}), std::future_status::ready);
    EXPECT_FALSE(thread.takeReports().empty());
}

TEST(AlarmThreadTest, endsAtOnceAndClosesTheDevice)
{
    const RealClock clock;
    const auto speaker = std::make_shared<FakeSpeaker>();
    {
        const AlarmThread thread(clock, sounderWith(speaker), Waiting::BootClock, nullptr);
    }
    EXPECT_GE(speaker->closed, 1);
}

}  // namespace

}  // namespace bathside::ui
