// What comes out of the loudspeaker: a null device's monitor is recorded and judged. That a thing
// is *heard* and that it is *never early* is asserted; how late it is, is printed.

#include <QCoreApplication>
#include <QObject>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include <gtest/gtest.h>

#include "tests/ui/sound/listening.h"
#include "tests/ui/sound/monitor.h"
#include "tests/ui/sound/sound_server.h"
#include "tests/ui/sound/stand_ins.h"
#include "ui/sound/pulse_out.h"
#include "ui/sound/qt_out.h"

namespace bathside::ui {

namespace {

using std::chrono::hours;
using std::chrono::milliseconds;
using std::chrono::seconds;
using test::dueAt;
using test::Heard;
using test::Monitor;
using test::RealClock;
using test::Reports;
using test::SoundServer;

constexpr seconds kAtMost{
    20};  // for anything to be heard; generous, because other tests may run beside
constexpr double kRate = Monitor::kRate;
const std::string kDevice = "bench";

template <typename Out>
std::unique_ptr<Sounder> sounderOf()
{
    std::vector<std::unique_ptr<AudioOut>> paths;
    paths.push_back(std::make_unique<Out>());
    return std::make_unique<Sounder>(std::move(paths));
}

std::size_t samplesIn(Micros time)
{
    return static_cast<std::size_t>(time.count()) * Monitor::kRate / 1'000'000;
}

struct Recorded : testing::Test {
    static std::unique_ptr<SoundServer> server;

    static void SetUpTestSuite()
    {
        server = std::make_unique<SoundServer>();
        server->addDevice(kDevice);
    }
    static void TearDownTestSuite() { server.reset(); }
};

std::unique_ptr<SoundServer> Recorded::server;

// The station's own path, up and playing silence.
struct Listening {
    RealClock clock;
    Reports reports;
    AlarmThread thread;
    Monitor monitor;

    explicit Listening(std::unique_ptr<Sounder> sounder = sounderOf<PulseOut>())
        : thread(clock, std::move(sounder), Waiting::BootClock, reports.notifier()),
          monitor(Recorded::server->address(), kDevice)
    {
        EXPECT_TRUE(reports.next<report::SoundFound>(thread, kAtMost));
        EXPECT_TRUE(monitor.silence(milliseconds{100}, kAtMost));
    }

    // From the first loud sample on; empty when nothing was heard.
    std::vector<float> heardFrom(std::size_t position, Micros length)
    {
        const auto onset = monitor.sound(position, kAtMost);
        if (!onset || !monitor.reach(onset->index + samplesIn(length), kAtMost))
            return {};
        return monitor.samples(onset->index, onset->index + samplesIn(length));
    }
};

void expectPulses(const Burst& burst, const std::vector<Heard>& heard)
{
    ASSERT_EQ(heard.size(), burst.pulses.size());
    for (std::size_t i = 0; i < heard.size(); ++i) {
        const double start = std::chrono::duration<double>(burst.pulses[i].start).count();
        const double length = std::chrono::duration<double>(burst.pulses[i].length).count();
        EXPECT_NEAR(heard[i].start - heard[0].start, start, 0.025);
        EXPECT_NEAR(heard[i].end - heard[i].start, length, 0.040);
    }
}

// Pitch within 1 %, four harmonics within 15 dB of it (published structure:
// tests/ui/sound/burst_test.cpp), and not the pitch of another level.
void expectPitch(const Burst& burst, std::span<const float> recording, const Heard& pulse)
{
    const auto middle = test::middleOf(recording, kRate, pulse);
    const double f0 = burst.pulses.front().pitchHz;
    EXPECT_NEAR(test::pitchIn(middle, kRate, f0 - 50.0, f0 + 50.0), f0, 0.01 * f0);
    const double reference = test::levelAt(middle, kRate, f0);
    int harmonics = 0;
    for (double hz = 2.0 * f0; hz <= 4000.0; hz += f0)
        harmonics += std::abs(test::levelAt(middle, kRate, hz) - reference) <= 15.0 ? 1 : 0;
    EXPECT_GE(harmonics, 4);
    for (const Level other : {Level::HeadsUp, Level::Limit, Level::Overrun}) {
        const double hz = burstOf(other).pulses.front().pitchHz;
        if (std::abs(hz - f0) > 1.0) {
            EXPECT_LT(test::levelAt(middle, kRate, hz), reference - 20.0) << hz;
        }
    }
}

class RecordedLevel : public Recorded, public testing::WithParamInterface<Level> {};

TEST_P(RecordedLevel, hasItsRhythmAndPitch)
{
    const Burst burst = burstOf(GetParam());
    Listening bench;
    // A machine that starves the stream leaves holes in the recording: those are the machine's, and
    // it is asked again.
    for (int attempt = 0; attempt < 3; ++attempt) {
        const std::uint64_t before = bench.thread.output().underflows;
        const std::size_t from = bench.monitor.position();
        bench.thread.publish(dueAt(bootNow() + milliseconds{50}, GetParam()));
        const auto recording = bench.heardFrom(from, burst.length() + milliseconds{300});
        bench.thread.publish(nullptr);
        ASSERT_FALSE(recording.empty()) << "not heard";
        ASSERT_TRUE(bench.monitor.silence(milliseconds{200}, kAtMost));
        bench.thread.settle();
        if (attempt < 2 && bench.thread.output().underflows != before)
            continue;
        const auto heard = test::pulsesIn(recording, kRate);
        expectPulses(burst, heard);
        for (const Heard& pulse : heard)
            expectPitch(burst, recording, pulse);
        break;
    }
}

std::string nameOf(const testing::TestParamInfo<Level>& level)
{
    const char* names[] = {"HeadsUp", "Limit", "Overrun"};
    return names[static_cast<std::size_t>(level.param)];
}

INSTANTIATE_TEST_SUITE_P(Sound, RecordedLevel,
                         testing::Values(Level::HeadsUp, Level::Limit, Level::Overrun), nameOf);

TEST_F(Recorded, nothingIsHeardWhileNothingIsDue)
{
    Listening bench;
    bench.thread.publish(dueAt(bootNow() + hours{1}, Level::Overrun));
    const std::size_t from = bench.monitor.position();
    ASSERT_TRUE(bench.monitor.reach(from + 2 * Monitor::kRate, kAtMost));
    const auto recording = bench.monitor.samples(from, from + 2 * Monitor::kRate);
    EXPECT_TRUE(std::ranges::all_of(recording, [](float s) { return s == 0.0F; }));
}

// Each burst is published, waited for at the loudspeaker, and ended. A missed one would be waited
// for in vain; a sound that arrives before its deadline is early.
TEST_F(Recorded, everyShortBurstIsHeardAndNoneEarly)
{
    const int bursts = std::getenv("BATHSIDE_LONG") ? 1000 : 100;
    Listening bench;
    std::vector<double> late;
    for (int i = 0; i < bursts; ++i) {
        const BootTime due = bootNow() + milliseconds{30};
        const std::size_t from = bench.monitor.position();
        bench.thread.publish(dueAt(due, Level::HeadsUp, std::to_string(i)));
        const auto onset = bench.monitor.sound(from, kAtMost);
        ASSERT_TRUE(onset) << "burst " << i << " was not heard";
        ASSERT_GE(onset->arrived, due) << "burst " << i << " was early";
        late.push_back(std::chrono::duration<double, std::milli>(onset->arrived - due).count());
        bench.thread.publish(nullptr);
        ASSERT_TRUE(bench.monitor.silence(milliseconds{50}, kAtMost))
            << "burst " << i << " did not end";
    }
    std::ranges::sort(late);
    const auto at = [&](double share) {
        return late[static_cast<std::size_t>(share * static_cast<double>(late.size() - 1))];
    };
    std::printf(
        "heard %zu of %d; deadline to arrival at the monitor: p50 %.1f, p95 %.1f, max %.1f ms\n",
        late.size(), bursts, at(0.5), at(0.95), late.back());
}

TEST_F(Recorded, repeatsUntilSomebodyActs)
{
    Listening bench;
    const Burst burst = burstOf(Level::Limit);
    const std::size_t from = bench.monitor.position();
    bench.thread.publish(dueAt(bootNow(), Level::Limit));
    const auto first = bench.monitor.sound(from, kAtMost);
    ASSERT_TRUE(first);
    const auto second =
        bench.monitor.sound(first->index + samplesIn(burst.length() + milliseconds{200}), kAtMost);
    ASSERT_TRUE(second);
    // The pause of this priority: 2.5 to 30 s (IEC 60601-1-8, table 3, from memory).
    const double pause = static_cast<double>(second->index - first->index) / kRate -
                         std::chrono::duration<double>(burst.length()).count();
    EXPECT_GE(pause, 2.5);
    EXPECT_LE(pause, 30.0);
}

// The window's thread does nothing from before the deadline until after the sound: the notifier's
// event waits in its queue.
TEST_F(Recorded, soundsWhileTheWindowIsStuck)
{
    QObject window;
    int seen = 0;
    RealClock clock;
    const Monitor monitor(server->address(), kDevice);
    AlarmThread thread(clock, sounderOf<PulseOut>(), Waiting::BootClock, [&] {
        QMetaObject::invokeMethod(
            &window, [&] { ++seen; }, Qt::QueuedConnection);
    });
    const std::size_t from = monitor.position();
    thread.publish(dueAt(bootNow() + milliseconds{500}, Level::Overrun));
    EXPECT_TRUE(monitor.sound(from, kAtMost));
    EXPECT_EQ(seen, 0);
    QCoreApplication::processEvents();
    EXPECT_GE(seen, 1);
}

TEST_F(Recorded, cuesAreHeardAlsoOverAnAlarm)
{
    Listening bench;
    for (int i = 0; i < 20; ++i) {
        const std::size_t from = bench.monitor.position();
        if (i % 2 == 0)
            bench.thread.click();
        else
            bench.thread.refuse();
        ASSERT_TRUE(bench.monitor.sound(from, kAtMost)) << "cue " << i;
        ASSERT_TRUE(bench.monitor.silence(milliseconds{50}, kAtMost));
    }
    // A click in the pause of an alarm that is due: the alarm's rhythm stays, the click's pitch is
    // there.
    const Burst limit = burstOf(Level::Limit);
    const std::size_t from = bench.monitor.position();
    bench.thread.publish(dueAt(bootNow(), Level::Limit));
    const auto burst = bench.heardFrom(from, limit.length() + milliseconds{300});
    ASSERT_EQ(test::pulsesIn(burst, kRate).size(), limit.pulses.size());
    const std::size_t after = bench.monitor.position();
    bench.thread.click();
    const auto click = bench.heardFrom(after, milliseconds{30});
    ASSERT_FALSE(click.empty());
    const double f = burstOf(Cue::Click).pulses.front().pitchHz;
    EXPECT_NEAR(test::pitchIn(click, kRate, 300.0, 3000.0), f, 40.0);
}

TEST_F(Recorded, theTestBurstProvesEachPitch)
{
    Listening bench;
    const Burst burst = burstOf(Cue::Test);
    const std::size_t from = bench.monitor.position();
    bench.thread.test();
    const auto recording = bench.heardFrom(from, burst.length() + milliseconds{200});
    const auto heard = test::pulsesIn(recording, kRate);
    ASSERT_EQ(heard.size(), 3U);
    for (std::size_t i = 0; i < heard.size(); ++i) {
        const double f0 = burst.pulses[i].pitchHz;
        EXPECT_NEAR(test::pitchIn(test::middleOf(recording, kRate, heard[i]), kRate, 200.0, 900.0),
                    f0, 0.01 * f0);
    }
}

// During a shift the volume cannot be brought below what was proven, nor muted, at the device or at
// our stream.
TEST_F(Recorded, theProvenVolumeIsKept)
{
    server->control("set-sink-volume " + kDevice + " 80%");
    Listening bench;
    bench.thread.holdVolume(0.8);
    bench.thread.settle();
    server->control("set-sink-volume " + kDevice + " 10%");
    const auto raised = bench.reports.next<report::VolumeRaised>(bench.thread, kAtMost);
    ASSERT_TRUE(raised);
    EXPECT_EQ(raised->raise.device, kDevice);
    EXPECT_NEAR(raised->raise.found.level, 0.1, 0.01);
    EXPECT_NEAR(raised->raise.raisedTo, 0.8, 0.01);

    const auto holds = [&](const std::string& what, const std::string& wanted) {
        for (const auto end = bootNow() + kAtMost; bootNow() < end;) {
            if (server->control(what).find(wanted) != std::string::npos)
                return true;
        }
        return false;
    };
    EXPECT_TRUE(holds("get-sink-volume " + kDevice, "80%"));
    server->control("set-sink-mute " + kDevice + " 1");
    EXPECT_TRUE(holds("get-sink-mute " + kDevice, "no"));
    const std::size_t from = bench.monitor.position();
    bench.thread.click();
    EXPECT_TRUE(bench.monitor.sound(from, kAtMost));
}

TEST_F(Recorded, aMutedDeviceIsNoSoundWhereNothingIsHeld)
{
    Listening bench;
    server->control("set-sink-mute " + kDevice + " 1");
    const auto lost = bench.reports.next<report::SoundLost>(bench.thread, kAtMost);
    ASSERT_TRUE(lost);
    EXPECT_EQ(lost->fault, OutFault::Muted);
    server->control("set-sink-mute " + kDevice + " 0");
    EXPECT_TRUE(bench.reports.next<report::SoundFound>(bench.thread, kAtMost));
}

TEST_F(Recorded, theSecondPathIsHeardToo)
{
    Listening bench(sounderOf<QtOut>());
    for (int i = 0; i < 10; ++i) {
        const std::size_t from = bench.monitor.position();
        bench.thread.publish(dueAt(bootNow(), Level::HeadsUp, std::to_string(i)));
        ASSERT_TRUE(bench.monitor.sound(from, kAtMost)) << i;
        bench.thread.publish(nullptr);
        ASSERT_TRUE(bench.monitor.silence(milliseconds{300}, kAtMost));
    }
}

}  // namespace

}  // namespace bathside::ui
