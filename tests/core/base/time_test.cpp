#include "core/base/time.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono_literals;

Stamp stampAt(Millis wall, Micros boot, std::uint8_t bootNo)
{
    return {.wall = WallTime(wall), .boot = boot, .bootId = {bootNo}};
}

TEST(Elapsed, isTheBootClocksDifferenceWithinOneBoot)
{
    const Elapsed took = elapsed(stampAt(0ms, 5s, 1), stampAt(90s, 95s, 1));
    EXPECT_EQ(took.time, 90s);
    EXPECT_TRUE(took.certain);
}

TEST(Elapsed, ignoresAStepOfTheWallClock)
{
    EXPECT_EQ(elapsed(stampAt(3600s, 5s, 1), stampAt(0ms, 15s, 1)).time, 10s);
    EXPECT_EQ(elapsed(stampAt(0ms, 5s, 1), stampAt(86400s, 15s, 1)).time, 10s);
}

TEST(Elapsed, countsMicroseconds)
{
    EXPECT_EQ(elapsed(stampAt(0ms, 0us, 1), stampAt(0ms, 9'999'999us, 1)).time, 9'999'999us);
}

TEST(Elapsed, fallsBackToWallTimeAcrossAReboot)
{
    const Elapsed took = elapsed(stampAt(1000s, 7200s, 1), stampAt(1042s, 12s, 2));
    EXPECT_EQ(took.time, 42s);
    EXPECT_FALSE(took.certain);
}

TEST(Elapsed, isNeverBelowZero)
{
    const Elapsed wentBack = elapsed(stampAt(1000s, 7200s, 1), stampAt(900s, 12s, 2));
    EXPECT_EQ(wentBack.time, 0us);
    EXPECT_FALSE(wentBack.certain);
    EXPECT_EQ(elapsed(stampAt(0ms, 10s, 1), stampAt(0ms, 4s, 1)).time, 0us);
}

TEST(Shifted, movesBothClocksAndKeepsTheBoot)
{
    const Stamp later = shifted(stampAt(1000ms, 500ms, 7), 1500ms);
    EXPECT_EQ(later, stampAt(2500ms, 2000ms, 7));
    EXPECT_EQ(shifted(later, -1500ms), stampAt(1000ms, 500ms, 7));
}

TEST(Shifted, roundsTheWallClockDownToMilliseconds)
{
    const Stamp earlier = shifted(stampAt(1000ms, 500ms, 1), -1us);
    EXPECT_EQ(earlier.wall, WallTime(999ms));
    EXPECT_EQ(earlier.boot, 499'999us);
}

}  // namespace
}  // namespace bathside
