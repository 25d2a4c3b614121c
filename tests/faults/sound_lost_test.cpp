// Broken audio: devices and servers that go, freeze and come back, and a program that is stopped.
// An alarm that is due must be heard as soon as there is anything to hear it on, and NO SOUND said
// while there is nothing.

#include <cstdio>

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include "tests/ui/sound/monitor.h"
#include "tests/ui/sound/sound_server.h"
#include "tests/ui/sound/stand_ins.h"

namespace bathside::ui {

namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;
using test::dueAt;
using test::Monitor;
using test::RealClock;
using test::Reports;
using test::SoundServer;

constexpr seconds kAtMost{30};

std::string toldBy(int pipe)
{
    char text[32] = {};
    const auto length = ::read(pipe, text, sizeof text - 1);
    return length > 0 ? std::string(text, static_cast<std::size_t>(length)) : std::string("none");
}

struct SoundLostTest : testing::Test {
    SoundServer server;
    RealClock clock;
    Reports reports;
    std::unique_ptr<AlarmThread> thread;

    void start(std::unique_ptr<Sounder> sounder = standardSounder(nullptr))
    {
        thread = std::make_unique<AlarmThread>(clock, std::move(sounder), Waiting::BootClock,
                                               reports.notifier());
    }
    template <typename Kind>
    std::optional<Kind> next()
    {
        return reports.next<Kind>(*thread, kAtMost);
    }
    void beDue() { thread->publish(dueAt(bootNow(), Level::Overrun)); }
};

TEST_F(SoundLostTest, anotherDeviceIsUsedAndTheFirstAgainWhenItIsBack)
{
    server.addDevice("bench");
    server.addDevice("spare");
    start();
    thread->preferDevice("bench");
    ASSERT_TRUE(next<report::SoundFound>());
    beDue();
    const Monitor spare(server.address(), "spare");
    {
        const Monitor bench(server.address(), "bench");
        ASSERT_TRUE(bench.sound(0, kAtMost));
        ASSERT_TRUE(spare.silence(milliseconds{100}, kAtMost));
    }
    const std::size_t from = spare.position();
    server.removeDevice("bench");
    ASSERT_TRUE(spare.sound(from, kAtMost));
    const auto moved = next<report::SoundMoved>();
    ASSERT_TRUE(moved);
    EXPECT_EQ(moved->from, "bench");
    EXPECT_EQ(moved->to, "spare");

    server.addDevice("bench");
    const auto back = next<report::SoundMoved>();
    ASSERT_TRUE(back);
    EXPECT_EQ(back->to, "bench");
    EXPECT_TRUE(Monitor(server.address(), "bench").sound(0, kAtMost));
    reports.take(*thread);
    EXPECT_EQ(reports.count<report::SoundLost>(), 0U);
}

TEST_F(SoundLostTest, theLastDeviceLostIsNoSoundUntilOneIsBack)
{
    server.addDevice("bench");
    start();
    ASSERT_TRUE(next<report::SoundFound>());
    beDue();
    ASSERT_TRUE(next<report::AlarmSounded>());
    server.removeDevice("bench");
    const auto lost = next<report::SoundLost>();
    ASSERT_TRUE(lost);
    EXPECT_EQ(lost->device, "bench");
    EXPECT_EQ(lost->fault, OutFault::NoDevice);
    EXPECT_EQ(thread->output().state, OutState::Failed);

    server.addDevice("other");
    const auto found = next<report::SoundFound>();
    ASSERT_TRUE(found);
    EXPECT_EQ(found->device, "other");
    EXPECT_TRUE(Monitor(server.address(), "other").sound(0, kAtMost));
}

// What the server makes up when the last device goes takes every sample and nobody hears it.
TEST_F(SoundLostTest, theMadeUpDeviceIsNone)
{
    server.addDevice("auto_null");
    start();
    ASSERT_TRUE(next<report::SoundLost>());
    server.addDevice("bench");
    const auto found = next<report::SoundFound>();
    ASSERT_TRUE(found);
    EXPECT_EQ(found->device, "bench");
}

TEST_F(SoundLostTest, aKilledServerIsNoSoundUntilItIsBack)
{
    server.addDevice("bench");
    start();
    ASSERT_TRUE(next<report::SoundFound>());
    server.kill();
    ASSERT_TRUE(next<report::SoundLost>());
    beDue();
    ASSERT_TRUE(next<report::AlarmRaised>());
    server.start();
    server.addDevice("bench");
    ASSERT_TRUE(next<report::SoundFound>());
    const auto sounded = next<report::AlarmSounded>();
    ASSERT_TRUE(sounded);
    EXPECT_GT(sounded->late, Micros{0});
    EXPECT_TRUE(Monitor(server.address(), "bench").sound(0, kAtMost));
}

TEST_F(SoundLostTest, aFrozenServerIsNoSoundUntilItThaws)
{
    server.addDevice("bench");
    start();
    ASSERT_TRUE(next<report::SoundFound>());
    server.freeze();
    ASSERT_TRUE(next<report::SoundLost>());
    beDue();
    ASSERT_TRUE(next<report::AlarmRaised>());
    server.thaw();
    ASSERT_TRUE(next<report::SoundFound>());
    EXPECT_TRUE(Monitor(server.address(), "bench").sound(0, kAtMost));
}

TEST_F(SoundLostTest, withoutAServerItIsSaidAndTheBellServes)
{
    server.kill();
    std::mutex mutex;
    double loudest = 0.0;
    start(standardSounder([&](double hz) {
        const std::scoped_lock lock(mutex);
        loudest = std::max(loudest, hz);
        return true;
    }));
    const auto found = next<report::SoundFound>();
    ASSERT_TRUE(found);
    EXPECT_EQ(found->device, "bell");
    beDue();
    ASSERT_TRUE(next<report::AlarmSounded>());
    server.start();
    server.addDevice("bench");
    const auto moved = next<report::SoundMoved>();
    ASSERT_TRUE(moved);
    EXPECT_EQ(moved->to, "bench");
    thread.reset();
    EXPECT_DOUBLE_EQ(loudest, burstOf(Level::Overrun).pulses.front().pitchHz);
}

// The whole program is stopped from before its deadline until after it; once it goes on, the alarm
// is heard. A child of our own is stopped, because a test cannot wake itself.
TEST_F(SoundLostTest, aStoppedProgramSoundsOnceItGoesOn)
{
    server.addDevice("bench");
    const BootTime due = bootNow() + seconds{4};
    int ready[2] = {-1, -1};
    ASSERT_EQ(::pipe(ready), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::prctl(PR_SET_PDEATHSIG, SIGKILL);
        ::dup2(ready[1], STDOUT_FILENO);
        // Another program, because libpulse serves no forked one.
        ::execl(BATHSIDE_SOUND_STATION, BATHSIDE_SOUND_STATION, std::to_string(due.count()).c_str(),
                nullptr);
        ::_exit(127);
    }
    ::close(ready[1]);
    const Monitor monitor(server.address(), "bench");
    char isFound = 'n';
    ASSERT_EQ(::read(ready[0], &isFound, 1), 1);
    ASSERT_EQ(isFound, 'y');
    ::kill(child, SIGSTOP);
    ASSERT_LT(bootNow(), due);
    const std::size_t from = monitor.position();
    Waiter waiter;
    waiter.wait(due + seconds{1});
    EXPECT_TRUE(monitor.silence(milliseconds{100}, kAtMost)) << "a stopped program sounded";
    const BootTime woken = bootNow();
    ::kill(child, SIGCONT);
    const auto onset = monitor.sound(from, kAtMost);
    const std::string told = toldBy(ready[0]);
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    ASSERT_TRUE(onset);
    EXPECT_GE(std::stoll(told), 1'000'000) << "it slept a second past its deadline and says so";
    EXPECT_GE(onset->arrived, woken);
    const Burst burst = burstOf(Level::Limit);
    EXPECT_LT(onset->arrived - woken, burst.repeatAfter - burst.length())
        << "only its repeat was heard";
    std::printf("after SIGCONT: heard after %lld ms (wanted: 250); reported as late by %s us\n",
                static_cast<long long>((onset->arrived - woken).count() / 1000), told.c_str());
}

}  // namespace

}  // namespace bathside::ui
