// Countdowns that are never early, and local times by the tz database (2026: Europe/Madrid goes to
// summer time on 29 March at 01:00 UTC, EU directive 2000/84/EC; Asia/Kolkata is UTC+05:30 without
// summer time).

#include "ui/text/time.h"

#include <QLocale>

#include <gtest/gtest.h>

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

struct Row {
    const char* name;
    Micros left;
    const char* text;
};

class Countdown : public testing::TestWithParam<Row> {};

TEST_P(Countdown, saysNoLessThanIsLeftAndNoMoreThanIsOver)
{
    EXPECT_EQ(countdownText(GetParam().left), QString::fromLatin1(GetParam().text));
}

INSTANTIATE_TEST_SUITE_P(
    Rows, Countdown,
    testing::Values(Row{"Whole", 67s, "1:07"}, Row{"Begun", 66001ms, "1:07"},
                    Row{"Last", 1us, "0:01"}, Row{"AtTheLimit", 0us, "0:00"},
                    Row{"JustOver", -1us, "+0:00"}, Row{"Over", -12999ms, "+0:12"},
                    Row{"MinuteOver", -60s, "+1:00"}, Row{"Hour", 3600s, "1:00:00"},
                    Row{"AlmostAnHour", 3599s, "59:59"}, Row{"Long", 3723s, "1:02:03"}),
    [](const auto& test) { return test.param.name; });

TEST(TimeTextTest, agesAreRoundedDown)
{
    QLocale::setDefault(QLocale(QLocale::English));
    EXPECT_EQ(ageText(41min + 59s), QStringLiteral("41 min"));
    EXPECT_EQ(ageText(59999ms), QStringLiteral("59 s"));
    EXPECT_EQ(leftText(41min + 59s), QStringLiteral("41 min left"));
    EXPECT_EQ(leftText(-(2min + 5s)), QStringLiteral("2 min over"));
    EXPECT_EQ(durationText(9800ms), QStringLiteral("9.8 s"));
    EXPECT_EQ(durationText(91200ms), QStringLiteral("1 min 31.2 s"));
    EXPECT_EQ(durationText(0ms), QStringLiteral("0.0 s"));
}

TEST(TimeTextTest, localTimeIsThatOfTheZone)
{
    using namespace std::chrono;
    const WallTime before = sys_days(2026y / March / 29) + 59min + 59s,
                   after = sys_days(2026y / March / 29) + 1h;
    EXPECT_EQ(localDateTimeText(before, "Europe/Madrid"),
              QStringLiteral("2026-03-29 01:59:59 +01:00"));
    EXPECT_EQ(localDateTimeText(after, "Europe/Madrid"),
              QStringLiteral("2026-03-29 03:00:00 +02:00"));
    EXPECT_EQ(localTimeText(after, "Asia/Kolkata"), QStringLiteral("06:30:00"));
    EXPECT_EQ(localDateTimeText(after, "America/St_Johns"),
              QStringLiteral("2026-03-28 22:30:00 −02:30"));
}

TEST(TimeTextTest, unknownZoneIsUtcAndSaysSo)
{
    using namespace std::chrono;
    const WallTime noon = sys_days(2026y / March / 1) + 12h;
    EXPECT_EQ(localDateTimeText(noon, "Nowhere/Such"),
              QStringLiteral("2026-03-01 12:00:00 +00:00"));
}

TEST(TimeTextTest, minutesAndDaysForPaper)
{
    const WallTime late = std::chrono::sys_days(2026y / 3 / 5) + 23h + 30min + 59s;
    EXPECT_EQ(localMinuteText(late, "Europe/Madrid"), QStringLiteral("00:30"));
    EXPECT_EQ(localDay(late, "Europe/Madrid"), std::chrono::sys_days(2026y / 3 / 6));
    EXPECT_EQ(localDay(late, "UTC"), std::chrono::sys_days(2026y / 3 / 5));
    EXPECT_EQ(dayMinuteText(7h + 5min + 59s), QStringLiteral("07:05"));
    EXPECT_EQ(dayMinuteText(24h + 10min), QStringLiteral("24:10"));
}

}  // namespace
}  // namespace bathside::ui
