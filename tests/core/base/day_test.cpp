#include "core/base/day.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono;

TEST(DayFromTest, takesCalendarDaysOnly)
{
    EXPECT_EQ(dayFrom("2028-02-29"), sys_days(2028y / February / 29));
    for (const char* text : {"", "2027-02-29", "2026-13-01", "2026-1-01", "26-01-01", "2026-01-01 ",
                             "2026-+1-01", "2026-01--1", "2026/01/01", "-026-01-01", "0000-01-01"})
        EXPECT_FALSE(dayFrom(text)) << text;
}

TEST(DayTextTest, isWhatIsReadBack)
{
    for (const sys_days day : {sys_days(1900y / January / 1), sys_days(2026y / March / 5),
                               sys_days(2028y / February / 29)})
        EXPECT_EQ(dayFrom(toText(day)), day);
    EXPECT_EQ(toText(2026y / March / 5), "2026-03-05");  // ISO 8601 calendar date, extended format
}

}  // namespace
}  // namespace bathside
