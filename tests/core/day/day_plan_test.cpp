#include "core/day/day_plan.h"

#include <gtest/gtest.h>

#include "tests/support/local_days.h"
#include "tests/support/shift.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

const LineId kLine{"A"};

/// Seconds since 07:00 local, when the tests' shift begins.
constexpr double clockTime(int hours, int minutes) { return (hours - 7) * 3600.0 + minutes * 60; }

// 6,000 birds at 3,000 an hour from 08:00, 0.2 mL a bird. A bag of 400 mL holds 2,000 doses
// (common practice: volume over dose) and lasts 40 minutes of the hour that it is good for.
class DayPlanTest : public testing::Test {
protected:
    DayPlanTest()
    {
        shift.open();
        shift.station.planBy(days);
        shift.say(PlanLine{{.line = kLine, .birds = 6000, .birdsPerHour = 3000, .start = 8h}});
    }

    [[nodiscard]] WallTime wall(double seconds) const
    {
        return WallTime(std::chrono::sys_days(std::chrono::year(2026) / 3 / 5)) + 6h +
               Millis(static_cast<std::int64_t>(seconds * 1000));
    }
    [[nodiscard]] std::optional<WallTime> nextPull() const { return shift.bench().nextPull; }
    [[nodiscard]] const DayPlan& day() const { return *shift.station.day(); }

    template <typename Remark>
    [[nodiscard]] const Remark* remark() const
    {
        for (const DayRemark& each : day().remarks) {
            if (const auto* found = std::get_if<Remark>(&each))
                return found;
        }
        return nullptr;
    }

    void firstBagHangs()
    {
        shift.madeUp("B1", clockTime(7, 49));
        shift.at(clockTime(8, 0)).say(HangBag{BagId{"B1"}, kLine});
    }

    test::TableDays days;
    test::BenchShift shift;
};

// Mixed 3 minutes before the first bird, 8 minutes of work: begun at 07:49.
TEST_F(DayPlanTest, writesTheStartOfTheNextPull)
{
    EXPECT_EQ(nextPull(), wall(clockTime(7, 49)));
    ASSERT_TRUE(day().next);
    EXPECT_EQ(day().next->volume, MicroLitres{400'000});
    EXPECT_EQ(day().next->birds, 2000);
    ASSERT_EQ(day().next->parts.size(), 2U);  // one a component
    EXPECT_EQ(day().next->parts[0].ampoules, 1);
    EXPECT_EQ(day().next->firstBird, wall(clockTime(8, 0)));
    EXPECT_EQ(day().next->lastBird, wall(clockTime(8, 40)));
}

TEST_F(DayPlanTest, plansTheSecondBagOnceTheFirstIsMixed)
{
    firstBagHangs();
    // Last bird 08:40, a minute to change over, less 3 and 8 minutes.
    EXPECT_EQ(nextPull(), wall(clockTime(8, 30)));
    ASSERT_EQ(day().forecasts.size(), 1U);
    EXPECT_EQ(day().forecasts[0].empty, wall(clockTime(8, 40)));
    EXPECT_EQ(day().forecasts[0].wasted, 0);
}

// Half as fast: the bag's hour is up before it is empty, and the next one is wanted later.
TEST_F(DayPlanTest, aSlowLineMovesTheNextPull)
{
    firstBagHangs();
    shift.at(clockTime(8, 10)).say(CountBirds{kLine, 250});
    const WallTime now = wall(clockTime(8, 10));
    const Bag& bag = *shift.bench().bag({"B1"});
    const WallTime limit = bag.firstDiluent->at.wall + 60min;
    constexpr Millis kBird = 2400ms;  // at 1,500 an hour
    const auto birds = (limit - now - 1ms) / kBird;
    const WallTime lastBird = now + birds * kBird;
    EXPECT_EQ(nextPull(), lastBird + 1min - 3min - 8min);
    EXPECT_EQ(day().today.lines[0].flow.ratePerHour, 1500);
    EXPECT_EQ(day().forecasts[0].wasted, 1750 - birds);
    EXPECT_LT(day().forecasts[0].earliest, day().forecasts[0].empty);
    EXPECT_GT(day().forecasts[0].latest, day().forecasts[0].empty);
}

// Ten minutes of standing still are ten minutes later, though nothing is said meanwhile.
TEST_F(DayPlanTest, aStoppedLinePutsTheNextPullOff)
{
    firstBagHangs();
    shift.at(clockTime(8, 5)).say(StopLine{kLine});
    shift.at(clockTime(8, 15));
    ASSERT_TRUE(nextPull());
    EXPECT_NEAR(std::chrono::duration<double>(*nextPull() - wall(clockTime(8, 40))).count(), 0, 60);
    ASSERT_TRUE(remark<LineStands>());
    EXPECT_EQ(remark<LineStands>()->since, wall(clockTime(8, 5)));
}

TEST_F(DayPlanTest, aPullThatIsLateStaysDue)
{
    firstBagHangs();
    shift.at(clockTime(8, 36));
    EXPECT_EQ(nextPull(), wall(clockTime(8, 30)));
    ASSERT_TRUE(remark<PullLate>());
    EXPECT_EQ(remark<PullLate>()->by, 6min);
    ASSERT_TRUE(remark<LineWaits>());  // from the first bag's end until the next can be there
    EXPECT_EQ(remark<LineWaits>()->from, wall(clockTime(8, 41)));
}

TEST_F(DayPlanTest, saysFromWhenABagWouldNotBeTooEarly)
{
    // 2,000 birds end at 08:40; its first ampoule may be in diluent an hour before at the earliest,
    // 2 minutes before it is mixed and 6 after it was begun.
    EXPECT_EQ(day().next->earliest, wall(clockTime(7, 34)));
}

TEST_F(DayPlanTest, isQuietWhileABagIsMadeUp)
{
    shift.at(clockTime(7, 40)).readyBag("B1");
    const auto before = shift.all<PullPlanned>().size();
    shift.at(clockTime(7, 48));
    EXPECT_EQ(shift.all<PullPlanned>().size(), before);
}

TEST_F(DayPlanTest, takesWhatTheStoresHold)
{
    const auto expires = std::chrono::sys_days(std::chrono::year(2027) / 1 / 31);
    shift.say(Receive{{{.of = ampoulesOf({"serotype 3"}, {"K7"}),
                        .place = "vessel 1",
                        .count = 2,
                        .doses = 2000,
                        .expires = expires}}});
    EXPECT_FALSE(day().plan.isFeasible());  // three bags are wanted
    const auto& why = day().plan.lines.at(0);
    ASSERT_FALSE(why);
    const auto* missing = std::get_if<plan::AmpoulesMissing>(&why.error().front());
    ASSERT_TRUE(missing);
    EXPECT_EQ(missing->missing, 1);
}

TEST_F(DayPlanTest, endsWithTheShift)
{
    ASSERT_TRUE(shift.station.day());
    shift.say(CloseShift{});
    EXPECT_FALSE(shift.station.day());
}

TEST_F(DayPlanTest, aLineTakenOutIsPlannedNoMore)
{
    shift.say(PlanLine{{.line = kLine, .removed = true}});
    EXPECT_FALSE(shift.station.day());
}

}  // namespace
}  // namespace bathside
