#include "app/system/background_source.h"

#include <future>
#include <semaphore>

#include <gtest/gtest.h>

namespace bathside::app {
namespace {

using namespace std::chrono_literals;

const Stamp kNow{.wall = WallTime(1'772'000'000s), .boot = 5'000s, .bootId = {1}};

class StillClock final : public Clock {
public:
    [[nodiscard]] Stamp now() const override { return kNow; }
};

// Gives one value each time the test lets it, and says when it waits again: the value before is
// then there to be polled.
struct Valve {
    std::counting_semaphore<> open{0};
    std::counting_semaphore<> asked{0};
    std::int64_t count = 0;

    std::vector<ProbeValue> take()
    {
        asked.release();
        open.acquire();
        return {{ProbeId{"P1"}, MilliCelsius{++count}}};
    }
};

TEST(BackgroundSourceTest, handsOutWhatItsThreadTook)
{
    StillClock clock;
    Valve valve;
    BackgroundSource source([&] { return valve.take(); }, 0ms, clock);
    valve.asked.acquire();
    EXPECT_FALSE(source.poll(kNow));  // still measuring: the answer is at once
    valve.open.release();
    valve.asked.acquire();
    const auto reading = source.poll(kNow);
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->probe, ProbeId{"P1"});
    EXPECT_EQ(reading->at, kNow);
    EXPECT_EQ(std::get<MilliCelsius>(reading->value).count, 1);
    EXPECT_FALSE(source.poll(kNow));
    valve.open.release();  // so that the thread can end
}

TEST(BackgroundSourceTest, keepsTheNewestIfNobodyPolls)
{
    constexpr auto kMost = BackgroundSource::kMostWaiting;
    StillClock clock;
    Valve valve;
    BackgroundSource source([&] { return valve.take(); }, 0ms, clock);
    for (std::size_t i = 0; i < kMost + 5; ++i) {
        valve.asked.acquire();
        valve.open.release();
    }
    valve.asked.acquire();
    std::size_t waiting = 1;
    EXPECT_EQ(std::get<MilliCelsius>(source.poll(kNow)->value).count, 6);
    while (source.poll(kNow))
        ++waiting;
    EXPECT_EQ(waiting, kMost);
    valve.open.release();
}

TEST(BackgroundSourceTest, endsAtOnceBetweenTwoReadings)
{
    StillClock clock;
    std::promise<void> taken;
    {
        BackgroundSource source(
            [&] {
                taken.set_value();
                return std::vector<ProbeValue>();
            },
            1h, clock);
        taken.get_future().wait();
    }  // a promise set twice, or an hour's wait, would be a failure
}

TEST(BackgroundSourceTest, givesNothingFromAfterTheInstantAskedFor)
{
    StillClock clock;
    Valve valve;
    BackgroundSource source([&] { return valve.take(); }, 0ms, clock);
    valve.open.release();
    valve.asked.acquire();
    valve.asked.acquire();
    EXPECT_FALSE(source.poll(shifted(kNow, -1us)));
    EXPECT_TRUE(source.poll(kNow));
    valve.open.release();
}

}  // namespace
}  // namespace bathside::app
