#include "core/day/local_time.h"

#include <gtest/gtest.h>

#include "tests/support/local_days.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;
using std::chrono::March, std::chrono::October, std::chrono::sys_days;

struct ShownRow {
    const char* name;
    sys_days day;
    Millis shown;
    Millis elapsed;
};

class ShownTime : public testing::TestWithParam<ShownRow> {};

TEST_P(ShownTime, isSoLongAfterMidnight)
{
    const test::TableDays days;
    const auto clock = DayClock::of(days, "Europe/Amsterdam", GetParam().day);
    ASSERT_TRUE(clock);
    EXPECT_EQ(clock->elapsedAt(GetParam().shown), GetParam().elapsed);
}

// Published: the tz database. Clocks go from 02:00 to 03:00 on 29 March 2026, from 03:00 to 02:00
// on 25 October 2026.
INSTANTIATE_TEST_SUITE_P(
    Amsterdam, ShownTime,
    testing::Values(ShownRow{"PlainDay", sys_days(2026y / March / 5), 7h, 7h},
                    ShownRow{"PlainDayPastMidnight", sys_days(2026y / March / 5), 25h, 25h},
                    ShownRow{"DayOf23Hours", sys_days(2026y / March / 29), 7h, 6h},
                    ShownRow{"BeforeTheChange", sys_days(2026y / March / 29), 90min, 90min},
                    ShownRow{"DayOf25Hours", sys_days(2026y / October / 25), 7h, 8h},
                    ShownRow{"BeforeTheChangeBack", sys_days(2026y / October / 25), 90min, 90min},
                    ShownRow{"TheNightBefore", sys_days(2026y / March / 28), 28h, 27h}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(DayClockTest, isNoneForAZoneThatIsNone)
{
    const test::TableDays days;
    EXPECT_FALSE(DayClock::of(days, "Nowhere/Land", sys_days(2026y / March / 5)));
}

}  // namespace
}  // namespace bathside
