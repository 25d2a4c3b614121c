#include "core/bath/silence.h"

#include <vector>

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono_literals;

Stamp heardAt(Micros since)
{
    return shifted(Stamp{.wall = WallTime(1'772'000'000s), .boot = 5'000s, .bootId = {1}}, since);
}

/// `count` readings, the first at 0.
std::vector<RawReading> every(Micros interval, int count)
{
    std::vector<RawReading> all;
    for (int i = 0; i < count; ++i)
        all.push_back({{"P1"}, heardAt(i * interval), MilliCelsius{28'000}});
    return all;
}

bool isSilentAfter(const std::vector<RawReading>& said, Micros since)
{
    return isSilent(said, heardAt(0s), shifted(said.back().at, since));
}

TEST(SilenceTest, isFiveOfItsIntervalsAndTenSecondsAtLeast)
{
    EXPECT_FALSE(isSilentAfter(every(1s, 30), 9'999ms));
    EXPECT_TRUE(isSilentAfter(every(1s, 30), 10s));
    EXPECT_FALSE(isSilentAfter(every(6s, 10), 29'999ms));
    EXPECT_TRUE(isSilentAfter(every(6s, 10), 30s));
    EXPECT_FALSE(isSilentAfter(every(60s, 2), 299s));
    EXPECT_TRUE(isSilentAfter(every(60s, 2), 300s));
}

TEST(SilenceTest, takesAPauseForNoHabit)
{
    auto said = every(1s, 30);
    said.push_back({{"P1"}, heardAt(5min), MilliCelsius{28'000}});
    EXPECT_TRUE(isSilentAfter(said, 10s));
}

TEST(SilenceTest, givesOneThatIsNotKnownYetAMinute)
{
    EXPECT_FALSE(isSilent({}, heardAt(0s), heardAt(59'999ms)));
    EXPECT_TRUE(isSilent({}, heardAt(0s), heardAt(60s)));
    EXPECT_FALSE(isSilentAfter(every(1s, 1), 59s));
    EXPECT_TRUE(isSilentAfter(every(1s, 1), 60s));
}

TEST(SilenceTest, countsFromWhenItWasListenedTo)
{
    const auto before = every(1s, 30);
    EXPECT_FALSE(isSilent(before, heardAt(100s), heardAt(109s)));
    EXPECT_TRUE(isSilent(before, heardAt(100s), heardAt(110s)));
}

TEST(SilenceTest, isToldOnce)
{
    auto said = every(1s, 30);
    said.push_back({{"P1"}, heardAt(40s), ReadingFault::Empty});
    EXPECT_FALSE(isSilentAfter(said, 1h));
}

}  // namespace
}  // namespace bathside
