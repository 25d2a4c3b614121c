#include "app/system/clock_sync.h"

#include <gtest/gtest.h>
#include <sys/timex.h>

namespace bathside::app {
namespace {

using namespace std::chrono_literals;

timex kernelSays(int status, long offset)
{
    timex kernel{};
    kernel.status = status;
    kernel.offset = offset;
    return kernel;
}

// Published: adjtimex(2), fields `status` and `offset`, and "Return value".
TEST(ClockSyncTest, takesTheKernelsWord)
{
    const ClockSync good = judgeClockSync(TIME_OK, kernelSays(STA_PLL, 1500));
    EXPECT_TRUE(good.synchronised);
    EXPECT_EQ(good.offset, 1500us);
    EXPECT_EQ(judgeClockSync(TIME_INS, kernelSays(STA_PLL | STA_NANO, -1'500'000)).offset, -1500us);
}

TEST(ClockSyncTest, isNotSynchronisedWhenAnythingSaysSo)
{
    EXPECT_FALSE(judgeClockSync(TIME_OK, kernelSays(STA_UNSYNC, 0)).synchronised);
    EXPECT_FALSE(judgeClockSync(TIME_ERROR, kernelSays(STA_PLL, 0)).synchronised);
    EXPECT_FALSE(judgeClockSync(-1, kernelSays(STA_PLL, 0)).synchronised);
    EXPECT_EQ(judgeClockSync(TIME_ERROR, kernelSays(STA_PLL, 999)).offset, 0us);
}

TEST(ClockSyncTest, agreesWithTheRunningKernel)
{
    timex kernel{};
    const int result = adjtimex(&kernel);
    const bool unsynchronised =
        result < 0 || result == TIME_ERROR || (kernel.status & STA_UNSYNC) != 0;
    EXPECT_EQ(readClockSync().synchronised, !unsynchronised);
}

}  // namespace
}  // namespace bathside::app
