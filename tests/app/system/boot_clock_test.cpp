#include "app/system/boot_clock.h"

#include <fstream>

#include <gtest/gtest.h>
#include <time.h>

#include "tests/app/system/fake_kernel.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;

constexpr BootId kBoot{1, 2, 3};

TEST(BootClockTest, givesBothClocksAndTheBoot)
{
    test::FakeKernel kernel;
    kernel.at = {.boot = 95s, .monotonic = 90s, .wall = 1'767'223'800'123'999us};
    const Stamp now = BootClock(kernel.reader(), kBoot).now();
    EXPECT_EQ(now.boot, 95s);
    EXPECT_EQ(now.wall, WallTime(1'767'223'800'123ms));  // cut, not rounded
    EXPECT_EQ(now.bootId, kBoot);
}

TEST(BootClockTest, countsSuspendAndIgnoresAStepOfTheWallClock)
{
    test::FakeKernel kernel;
    kernel.at = {.boot = 100s, .monotonic = 100s, .wall = 5000s};
    const BootClock clock(kernel.reader(), kBoot);
    const Stamp before = clock.now();
    kernel.pass(5s);
    kernel.suspend(3600s);
    kernel.at.wall -= 7200s;
    const Elapsed took = elapsed(before, clock.now());
    EXPECT_EQ(took.time, 3605s);
    EXPECT_TRUE(took.certain);
}

// Put aside for 40 ms between the readings: that pair is thrown away.
TEST(BootClockTest, readsAgainWhenInterrupted)
{
    test::FakeKernel kernel;
    kernel.at = {.boot = 10s, .monotonic = 10s, .wall = 1000s};
    kernel.interrupt = {0us, 0us, 40ms, 0us};  // before the wall clock is read
    const ClockReading reading = readTogether(kernel.reader());
    EXPECT_EQ(reading.wall - reading.boot, 990s);
    EXPECT_EQ(reading.boot, 10s + 40ms);
}

TEST(BootClockTest, keepsTheTightestTryWhenAlwaysInterrupted)
{
    test::FakeKernel kernel;
    kernel.at = {.boot = 10s, .monotonic = 10s, .wall = 1000s};
    for (const Micros gap : {900us, 500us, 100us, 700us, 800us, 600us, 900us, 900us})
        kernel.interrupt.insert(kernel.interrupt.end(), {0us, 0us, 0us, gap});
    const ClockReading reading = readTogether(kernel.reader());
    EXPECT_EQ(kernel.readings, 8 * 4);
    EXPECT_LE(abs(reading.wall - reading.boot - 990s), 50us);  // half of the tightest gap
}

TEST(BootClockTest, neverGoesBackOnTheRealClock)
{
    const BootClock clock;
    Stamp last = clock.now();
    for (int i = 0; i < 10'000; ++i) {
        const Stamp now = clock.now();
        ASSERT_GE(now.boot, last.boot);
        last = now;
    }
}

// Published: clock_gettime(2): CLOCK_BOOTTIME is CLOCK_MONOTONIC plus the time asleep.
TEST(BootClockTest, isTheKernelsBootClock)
{
    timespec before{};
    timespec after{};
    clock_gettime(CLOCK_BOOTTIME, &before);
    const Micros boot = BootClock().now().boot;
    clock_gettime(CLOCK_BOOTTIME, &after);
    EXPECT_GE(boot, std::chrono::floor<Micros>(std::chrono::seconds(before.tv_sec) +
                                               std::chrono::nanoseconds(before.tv_nsec)));
    EXPECT_LE(boot, std::chrono::seconds(after.tv_sec) + std::chrono::nanoseconds(after.tv_nsec));
    const ClockReading reading = BootClock().reading();
    EXPECT_GE(reading.boot + 1ms, reading.monotonic);
}

// Form published: random(4); the digits are constructed.
TEST(BootIdTest, readsTheKernelsForm)
{
    const BootId expected{0xfe, 0xae, 0xc7, 0xb0, 0x8f, 0x1b, 0x42, 0x8a,
                          0xbf, 0x52, 0x10, 0x82, 0x8f, 0xd3, 0x1a, 0x59};
    EXPECT_EQ(parseBootId("feaec7b0-8f1b-428a-bf52-10828fd31a59"), expected);
}

TEST(BootIdTest, refusesEverythingElse)
{
    for (const char* text :
         {"", "feaec7b0", "feaec7b0-8f1b-428a-bf52-10828fd31a5",
          "feaec7b0-8f1b-428a-bf52-10828fd31a599", "feaec7b08f1b-428a-bf52-10828fd31a59-",
          "feaec7b0-8f1b-428a-bf52-10828fd31a5g", "feaec7b0-8f1b-428a-bf52-10828fd31a5 ",
          "-eaec7b0-8f1b-428a-bf52-10828fd31a59"})
        EXPECT_FALSE(parseBootId(text).has_value()) << text;
}

TEST(BootIdTest, isTheSameForEveryStartWithinABoot)
{
    EXPECT_EQ(readBootId(), readBootId());
    EXPECT_NE(readBootId(), BootId{});
}

// Then a restart counts as a boot of its own, and times across it as uncertain.
TEST(BootIdTest, isMadeUpForEachStartWhereTheKernelDoesNotSay)
{
    const test::TempFolder folder;
    const auto missing = folder.path() / "boot_id";
    EXPECT_NE(readBootId(missing), readBootId(missing));
    std::ofstream(missing) << "no id\n";
    EXPECT_NE(readBootId(missing), readBootId(missing));
}

}  // namespace
}  // namespace bathside::app
