#include "core/record/days.h"

#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/base/rfc3339.h"
#include "core/trail/event_form.h"
#include "tests/support/local_days.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;
using Ranges = std::vector<SeqRange>;

class Log {
public:
    Log& add(const char* at, Fact fact)
    {
        Event event;
        event.seq = ++m_seq;
        event.at.wall = fromRfc3339(at).value();
        event.fact = std::move(fact);
        m_finder.take(entryOf(event, {"bench 1"}));
        return *this;
    }
    Log& open(const char* at) { return add(at, ShiftOpened{"Europe/Amsterdam", {}}); }
    Log& close(const char* at) { return add(at, ShiftClosed{}); }
    Log& note(const char* at) { return add(at, NoteMade{"x"}); }
    Log& takeBack(const char* at, Seq seq) { return add(at, FactTakenBack{{seq}, std::nullopt}); }

    [[nodiscard]] Ranges on(std::chrono::year_month_day date,
                            const char* zone = "Europe/Amsterdam") const
    {
        const LocalDay day = test::TableDays().day(zone, date).value();
        return m_finder.record(day.start, day.end);
    }
    [[nodiscard]] const std::vector<ShiftSpan>& shifts() const { return m_finder.shifts(); }

private:
    DayFinder m_finder;
    Seq m_seq = 0;
};

constexpr auto kFifth = 2026y / std::chrono::March / 5;
constexpr auto kSixth = 2026y / std::chrono::March / 6;

TEST(DayFinderTest, nothingHappenedInAnEmptyTrail) { EXPECT_EQ(Log().on(kFifth), Ranges{}); }

TEST(DayFinderTest, aDayIsItsShiftsAndWhatLiesBetweenThem)
{
    Log log;
    log.note("2026-03-04T22:59:59.999Z");  // 23:59:59.999 of the day before
    log.note("2026-03-04T23:00:00.000Z");  // midnight
    log.open("2026-03-05T06:00:00Z").note("2026-03-05T06:01:00Z").close("2026-03-05T07:00:00Z");
    log.note("2026-03-05T08:00:00Z");
    log.open("2026-03-05T09:00:00Z").close("2026-03-05T10:00:00Z");
    log.note("2026-03-05T22:59:59.999Z");
    log.note("2026-03-05T23:00:00.000Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{2, 9}}));
    EXPECT_EQ(log.on(kSixth), (Ranges{{10, 10}}));
}

TEST(DayFinderTest, aShiftOverMidnightBelongsToTheDayItWasOpenedOn)
{
    Log log;
    log.open("2026-03-05T20:00:00Z").note("2026-03-06T02:00:00Z").close("2026-03-06T04:00:00Z");
    log.note("2026-03-06T04:00:01Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 3}}));
    EXPECT_EQ(log.on(kSixth), (Ranges{{4, 4}}));
}

TEST(DayFinderTest, aShiftsEventsBelongToItWhateverTheirClockSays)
{
    Log log;
    log.open("2026-03-05T06:00:00Z").note("2026-03-09T00:00:00Z").note("2020-01-01T00:00:00Z");
    log.close("2026-03-05T07:00:00Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 4}}));
    EXPECT_EQ(log.on(2026y / std::chrono::March / 9), Ranges{});
}

TEST(DayFinderTest, outsideShiftsTheClockDecidesEvenWhenItWentBack)
{
    Log log;
    log.note("2026-03-05T12:00:00Z").note("2026-03-06T12:00:00Z").note("2026-03-05T12:00:01Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 1}, {3, 3}}));
    EXPECT_EQ(log.on(kSixth), (Ranges{{2, 2}}));
}

TEST(DayFinderTest, aShiftThatWasNeverClosedReachesToTheNextOpening)
{
    Log log;
    log.open("2026-03-05T06:00:00Z").note("2026-03-06T05:00:00Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 2}}));
    EXPECT_FALSE(log.shifts().front().closed);
    log.open("2026-03-06T06:00:00Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 2}}));
    EXPECT_EQ(log.on(kSixth), (Ranges{{3, 3}}));
}

TEST(DayFinderTest, aClosingTakenBackOpensTheShiftAgain)
{
    Log log;
    log.open("2026-03-05T06:00:00Z").close("2026-03-05T07:00:00Z").note("2026-03-06T07:00:01Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 2}}));
    log.takeBack("2026-03-06T07:00:02Z", 2).note("2026-03-06T07:00:03Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 5}}));
    EXPECT_EQ(log.on(kSixth), Ranges{});
    log.close("2026-03-06T08:00:00Z").note("2026-03-06T09:00:00Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 6}}));
    EXPECT_EQ(log.on(kSixth), (Ranges{{7, 7}}));
    EXPECT_TRUE(log.shifts().front().closed);
}

// Closed twice, and only the first closing is taken back: what lies between comes in, what follows
// stays out.
TEST(DayFinderTest, anEndThatMovesLaterTakesInOnlyWhatLiesBefore)
{
    Log log;
    log.open("2026-03-05T06:00:00Z").close("2026-03-05T07:00:00Z").note("2026-03-05T07:00:01Z");
    log.close("2026-03-05T07:00:02Z")
        .note("2026-03-06T07:00:03Z")
        .takeBack("2026-03-06T07:00:04Z", 2);
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 4}}));
    EXPECT_EQ(log.on(kSixth), (Ranges{{5, 6}}));
}

TEST(DayFinderTest, anOpeningTakenBackEndsThere)
{
    Log log;
    log.open("2026-03-05T06:00:00Z")
        .note("2026-03-05T06:00:01Z")
        .takeBack("2026-03-05T06:00:02Z", 1);
    log.note("2026-03-06T06:00:00Z");
    EXPECT_EQ(log.on(kFifth), (Ranges{{1, 3}}));
    EXPECT_EQ(log.on(kSixth), (Ranges{{4, 4}}));
}

TEST(DayFinderTest, aShiftKnowsItsZone)
{
    Log log;
    log.open("2026-03-05T06:00:00Z");
    EXPECT_EQ(log.shifts().front().zone, "Europe/Amsterdam");
}

// The change of clocks falls into the day, or makes where it begins (published rows: local_days.h).
TEST(DayFinderTest, daysOf23And25Hours)
{
    Log spring;
    spring.note("2026-03-28T22:59:59Z").note("2026-03-28T23:00:00Z").note("2026-03-29T21:59:59Z");
    spring.note("2026-03-29T22:00:00Z");
    EXPECT_EQ(spring.on(2026y / std::chrono::March / 29), (Ranges{{2, 3}}));
    Log autumn;
    autumn.note("2026-10-24T21:59:59Z").note("2026-10-24T22:00:00Z").note("2026-10-25T22:59:59Z");
    autumn.note("2026-10-25T23:00:00Z");
    EXPECT_EQ(autumn.on(2026y / std::chrono::October / 25), (Ranges{{2, 3}}));
}

TEST(DayFinderTest, aDayThatBeginsAtOne)
{
    Log log;
    log.note("2025-04-24T21:59:59Z").note("2025-04-24T22:00:00Z").note("2025-04-25T20:59:59Z");
    log.note("2025-04-25T21:00:00Z");
    EXPECT_EQ(log.on(2025y / std::chrono::April / 25, "Africa/Cairo"), (Ranges{{2, 3}}));
}

// The table of zones that these tests stand on agrees with the tz database where it knows the zone.
TEST(TableDaysTest, agreesWithThePublishedDays)
{
    const test::TableDays days;
    int known = 0;
    for (const test::LocalDayRow& row : test::publishedDays()) {
        const auto day = days.day(row.zone, row.date);
        if (!days.offset(row.zone, WallTime()))
            continue;
        // Each zone of the table knows one year's changes; Cairo's autumn is not among them.
        if (std::string_view(row.name) == "CairoOf25Hours")
            continue;
        EXPECT_EQ(day, test::dayOf(row)) << row.name;
        ++known;
    }
    EXPECT_EQ(known, 4);
    EXPECT_FALSE(days.day("Pacific/Apia", 2011y / std::chrono::December / 30));
}

}  // namespace
}  // namespace bathside
