#include "core/plan/day_time.h"

#include <gtest/gtest.h>

namespace bathside::plan {
namespace {

using namespace std::chrono_literals;

TEST(DayTimeTest, countsOnPastMidnightAndBackBeforeIt)
{
    EXPECT_EQ(dayTimeText(0ms), "00:00:00.000");
    EXPECT_EQ(dayTimeText(7h + 5min + 9s + 12ms), "07:05:09.012");
    EXPECT_EQ(dayTimeText(24h + 10min), "24:10:00.000");
    EXPECT_EQ(dayTimeText(123h), "123:00:00.000");
    EXPECT_EQ(dayTimeText(-10min - 1ms), "-00:10:00.001");
}

}  // namespace
}  // namespace bathside::plan
