#include "ui/sound/bell_out.h"

#include <condition_variable>
#include <mutex>

#include <gtest/gtest.h>

namespace bathside::ui {

namespace {

using std::chrono::milliseconds;

// Writes down the tones it is told to make.
struct Beeper {
    std::mutex mutex;
    std::condition_variable came;
    std::vector<double> tones;
    bool works = true;

    BellOut::Tone tone()
    {
        return [this](double hz) {
            const std::scoped_lock lock(mutex);
            tones.push_back(hz);
            came.notify_all();
            return works;
        };
    }

    std::vector<double> waitFor(std::size_t count)
    {
        std::unique_lock lock(mutex);
        came.wait_for(lock, std::chrono::seconds{10}, [&] { return tones.size() >= count; });
        return tones;
    }
};

std::shared_ptr<const Burst> burst(std::initializer_list<Pulse> pulses)
{
    return std::make_shared<const Burst>(Burst{.pulses = pulses, .samples = {}});
}

TEST(BellOutTest, makesEachPulseAtItsPitch)
{
    Beeper beeper;
    BellOut out(beeper.tone());
    out.open({});
    EXPECT_EQ(out.status().state, OutState::Ready);
    out.play(Voice::Alarm, burst({{milliseconds{0}, milliseconds{2}, 330.0},
                                  {milliseconds{4}, milliseconds{2}, 500.0}}));
    // The first zero is the trial at opening.
    EXPECT_EQ(beeper.waitFor(5), (std::vector<double>{0.0, 330.0, 0.0, 500.0, 0.0}));
}

TEST(BellOutTest, silenceEndsATone)
{
    Beeper beeper;
    BellOut out(beeper.tone());
    out.open({});
    out.play(Voice::Alarm, burst({{milliseconds{0}, std::chrono::hours{1}, 330.0}}));
    (void)beeper.waitFor(2);
    out.silence();
    EXPECT_EQ(beeper.waitFor(3), (std::vector<double>{0.0, 330.0, 0.0}));
}

TEST(BellOutTest, aCueDoesNotCutAnAlarm)
{
    Beeper beeper;
    BellOut out(beeper.tone());
    out.open({});
    out.play(Voice::Alarm, burst({{milliseconds{0}, std::chrono::hours{1}, 330.0}}));
    (void)beeper.waitFor(2);
    out.play(Voice::Cue, burst({{milliseconds{0}, milliseconds{1}, 1200.0}}));
    out.silence();
    EXPECT_EQ(beeper.waitFor(3), (std::vector<double>{0.0, 330.0, 0.0}));
}

TEST(BellOutTest, failsWhereThereIsNoBeeper)
{
    Beeper beeper;
    beeper.works = false;
    BellOut out(beeper.tone());
    bool isTold = false;
    out.listen([&] { isTold = true; });
    out.open({});
    EXPECT_EQ(out.status().fault, OutFault::NoDevice);
    EXPECT_TRUE(isTold);
    BellOut none(nullptr);
    none.open({});
    EXPECT_EQ(none.status().state, OutState::Failed);
}

TEST(BellOutTest, closingEndsATone)
{
    Beeper beeper;
    BellOut out(beeper.tone());
    out.open({});
    out.play(Voice::Alarm, burst({{milliseconds{0}, std::chrono::hours{1}, 330.0}}));
    (void)beeper.waitFor(2);
    out.close();
    EXPECT_EQ(beeper.waitFor(3).back(), 0.0);
    EXPECT_EQ(out.status().state, OutState::Closed);
}

}  // namespace

}  // namespace bathside::ui
