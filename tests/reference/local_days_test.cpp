// Local days of 23, 24, 24.5 and 25 hours, days that begin at 01:00 and a date that never was: the
// system's tz database, as the station reads it, against rows read out of it by another program.

#include "tests/support/local_days.h"

#include <string>

#include <gtest/gtest.h>

#include "core/trail/store/zone_days.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;
using std::chrono::seconds;

const store::ZoneDays kDays;

class PublishedDay : public testing::TestWithParam<test::LocalDayRow> {};

TEST_P(PublishedDay, beginsAndEndsThere)
{
    EXPECT_EQ(kDays.day(GetParam().zone, GetParam().date), test::dayOf(GetParam()));
}

INSTANTIATE_TEST_SUITE_P(TzDatabase, PublishedDay, testing::ValuesIn(test::publishedDays()),
                         [](const auto& row) { return std::string(row.param.name); });

// Published: the tz database, release 2025b; neither zone changes its clocks.
TEST(LocalDaysTest, daysAreOf24HoursWhereClocksDoNotChange)
{
    for (const char* zone : {"Asia/Kolkata", "America/Phoenix", "UTC"}) {
        for (auto date = std::chrono::sys_days(2026y / 1 / 1);
             date < std::chrono::sys_days(2027y / 1 / 1); date += std::chrono::days(1)) {
            const auto day = kDays.day(zone, date);
            ASSERT_TRUE(day) << zone;
            ASSERT_EQ(day->end - day->start, 24h) << zone;
        }
    }
}

TEST(LocalDaysTest, everyInstantOfAYearIsInExactlyOneDay)
{
    for (const char* zone : {"Europe/Amsterdam", "Australia/Lord_Howe", "Africa/Casablanca"}) {
        auto date = std::chrono::sys_days(2026y / 1 / 1);
        WallTime end = kDays.day(zone, date).value().start;
        for (; date < std::chrono::sys_days(2027y / 1 / 1); date += std::chrono::days(1)) {
            const auto day = kDays.day(zone, date);
            ASSERT_TRUE(day) << zone;
            ASSERT_EQ(day->start, end) << zone;
            end = day->end;
        }
    }
}

// Published: the tz database, 2011: 29 December, 23:59:59 at -10:00, is followed by the 31st at
// +14:00.
TEST(LocalDaysTest, aDateThatWasLeftOutIsNoDay)
{
    EXPECT_FALSE(kDays.day("Pacific/Apia", 2011y / 12 / 30));
    const auto before = kDays.day("Pacific/Apia", 2011y / 12 / 29);
    const auto after = kDays.day("Pacific/Apia", 2011y / 12 / 31);
    ASSERT_TRUE(before && after);
    EXPECT_EQ(before->end, after->start);
}

TEST(LocalDaysTest, whatIsNoZoneOrNoDateIsNoDay)
{
    for (const char* zone : {"Europe/Nowhere", "", "../etc/passwd"}) {
        EXPECT_FALSE(kDays.day(zone, 2026y / 3 / 5)) << zone;
        EXPECT_FALSE(kDays.offset(zone, WallTime())) << zone;
    }
    EXPECT_FALSE(kDays.day("Europe/Amsterdam", 2026y / 2 / 30));
}

// Published: the tz database; 02:30 on 2026-10-25 is there twice in Amsterdam, an hour apart.
TEST(LocalDaysTest, theHourThatIsThereTwiceHasTwoOffsets)
{
    EXPECT_EQ(kDays.offset("Europe/Amsterdam", WallTime(seconds(1792888200))), 2h);  // 00:30Z
    EXPECT_EQ(kDays.offset("Europe/Amsterdam", WallTime(seconds(1792891800))), 1h);  // 01:30Z
}

}  // namespace
}  // namespace bathside
