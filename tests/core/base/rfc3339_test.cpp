#include "core/base/rfc3339.h"

#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace bathside {
namespace {

struct Row {
    const char* name;
    const char* text;
    std::int64_t epochMs;
};

std::string rowName(const testing::TestParamInfo<Row>& row) { return row.param.name; }

class Rfc3339Reads : public testing::TestWithParam<Row> {};

TEST_P(Rfc3339Reads, asTheSameInstant)
{
    const auto at = fromRfc3339(GetParam().text);
    ASSERT_TRUE(at.has_value());
    EXPECT_EQ(at->time_since_epoch().count(), GetParam().epochMs);
}

// Published: RFC 3339, section 5.8, all five examples; that the two leap-second ones are one
// instant is said there. Epoch seconds computed with Python's datetime. That :60 becomes the last
// millisecond of its minute is our own rule (POSIX time has no leap second).
INSTANTIATE_TEST_SUITE_P(
    Section58, Rfc3339Reads,
    testing::Values(Row{"Fraction", "1985-04-12T23:20:50.52Z", 482196050520},
                    Row{"Offset", "1996-12-19T16:39:57-08:00", 851042397000},
                    Row{"LeapSecond", "1990-12-31T23:59:60Z", 662687999999},
                    Row{"LeapSecondWithOffset", "1990-12-31T15:59:60-08:00", 662687999999},
                    Row{"OffsetOfTwentyMinutes", "1937-01-01T12:00:27.87+00:20", -1041337172130}),
    rowName);

// Published: RFC 3339, section 5.6 ("T" and "Z" may be lower case) and 4.3 (-00:00: the offset is
// unknown, the instant is not); section numbers from memory. Instants computed with Python's
// datetime.
INSTANTIATE_TEST_SUITE_P(
    Forms, Rfc3339Reads,
    testing::Values(Row{"LowerCase", "1985-04-12t23:20:50.52z", 482196050520},
                    Row{"UnknownOffset", "1996-12-20T00:39:57-00:00", 851042397000},
                    Row{"FinerThanMilliseconds", "1985-04-12T23:20:50.520999999Z", 482196050520},
                    Row{"OneMillisecond", "1970-01-01T00:00:00.001Z", 1},
                    Row{"LeapDay", "2024-02-29T00:00:00Z", 1709164800000},
                    Row{"OffsetOverMidnight", "2026-01-01T00:30:00+01:00", 1767223800000}),
    rowName);

class Rfc3339Refuses : public testing::TestWithParam<Row> {};

TEST_P(Rfc3339Refuses, andGivesNothing) { EXPECT_FALSE(fromRfc3339(GetParam().text).has_value()); }

// Published: the grammar of RFC 3339, section 5.6, and the limits of section 5.7; rows constructed.
INSTANTIATE_TEST_SUITE_P(
    Grammar, Rfc3339Refuses,
    testing::Values(
        Row{"Nothing", "", 0}, Row{"DateAlone", "2026-03-05", 0},
        Row{"NoOffset", "2026-03-05T06:10:00", 0}, Row{"Blank", "2026-03-05 06:10:00Z", 0},
        Row{"BlankBefore", " 2026-03-05T06:10:00Z", 0},
        Row{"RestBehind", "2026-03-05T06:10:00Z ", 0}, Row{"NoSeconds", "2026-03-05T06:10Z", 0},
        Row{"PointAlone", "2026-03-05T06:10:00.Z", 0}, Row{"Comma", "2026-03-05T06:10:00,5Z", 0},
        Row{"ShortYear", "26-03-05T06:10:00Z", 0}, Row{"SignedYear", "-026-03-05T06:10:00Z", 0},
        Row{"MonthZero", "2026-00-05T06:10:00Z", 0},
        Row{"MonthThirteen", "2026-13-05T06:10:00Z", 0}, Row{"DayZero", "2026-03-00T06:10:00Z", 0},
        Row{"NoLeapDay", "2026-02-29T06:10:00Z", 0}, Row{"DayThirtyOne", "2026-04-31T06:10:00Z", 0},
        Row{"Hour24", "2026-03-05T24:00:00Z", 0}, Row{"Minute60", "2026-03-05T06:60:00Z", 0},
        Row{"Second61", "2026-03-05T06:10:61Z", 0},
        Row{"OffsetHour24", "2026-03-05T06:10:00+24:00", 0},
        Row{"OffsetMinute60", "2026-03-05T06:10:00+01:60", 0},
        Row{"OffsetWithoutColon", "2026-03-05T06:10:00+0100", 0},
        Row{"OffsetHoursOnly", "2026-03-05T06:10:00+01", 0},
        Row{"SignInField", "2026-03-05T+6:10:00Z", 0},
        Row{"LetterInField", "2026-03-05T0x:10:00Z", 0}),
    rowName);

TEST(Rfc3339, writesUtcWithThreeDecimals)
{
    EXPECT_EQ(toRfc3339(WallTime(Millis(0))), "1970-01-01T00:00:00.000Z");
    EXPECT_EQ(toRfc3339(WallTime(Millis(482196050520))), "1985-04-12T23:20:50.520Z");
    EXPECT_EQ(toRfc3339(WallTime(Millis(-1041337172130))), "1937-01-01T11:40:27.870Z");
}

// Years 0000 to 9999 are all that the text form can hold (RFC 3339, section 1).
TEST(Rfc3339, readsBackWhatItWrote)
{
    constexpr std::int64_t kFirst = -62'167'219'200'000;  // 0000-01-01T00:00:00.000Z
    constexpr std::int64_t kLast = 253'402'300'799'999;   // 9999-12-31T23:59:59.999Z
    constexpr std::int64_t kStep = 86'400'000LL * 97 + 12'345'677;
    for (std::int64_t ms = kFirst; ms <= kLast; ms += kStep) {
        const WallTime at{Millis(ms)};
        ASSERT_EQ(fromRfc3339(toRfc3339(at)), at) << toRfc3339(at);
    }
    EXPECT_EQ(toRfc3339(WallTime(Millis(kFirst))), "0000-01-01T00:00:00.000Z");
    EXPECT_EQ(toRfc3339(WallTime(Millis(kLast))), "9999-12-31T23:59:59.999Z");
}

// No beginning of a good text is a good text.
TEST(Rfc3339, refusesEveryPrefix)
{
    const std::string whole = "1996-12-19T16:39:57.123-08:00";
    for (std::size_t length = 0; length < whole.size(); ++length)
        EXPECT_FALSE(fromRfc3339(whole.substr(0, length)).has_value()) << length;
}

}  // namespace
}  // namespace bathside
