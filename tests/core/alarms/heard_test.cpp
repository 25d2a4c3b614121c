// How long a heard alarm is hushed, and what becomes of alarms across a start of the machine.

#include <gtest/gtest.h>

#include "core/alarms/alarms.h"
#include "tests/core/alarms/support.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

// --- heard ---

TEST(Heard, hushesForTwentySecondsInTheCriticalWindow)  // from memory
{
    BenchMaker maker = outAt(0s);
    maker.step({1, 1}, Step::Bath, 5s).raised(kThaw, Level::Overrun, at(100s), at(101s));
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(121s - 1us)), kThaw)->hushed);
    EXPECT_EQ(alarms(maker.bench, at(101s)).nextChange, at(121s).boot);
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(121s)), kThaw)->hushed);
}

TEST(Heard, hushesForTwoMinutesOutsideIt)  // from memory
{
    BenchMaker maker;
    maker.raised("reading bath", Level::Overrun, at(900s), at(950s));
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(1070s - 1us)), "reading bath")->hushed);
    EXPECT_EQ(alarms(maker.bench, at(950s)).nextChange, at(1070s).boot);
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(1070s)), "reading bath")->hushed);
}

TEST(Heard, keepsTheTimeThatHeldWhenItWasHeard)
{
    BenchMaker maker = outAt(0s);
    maker.lost({1, 1}, LossReason::Dropped, 940s).closePull(940s);
    maker.raised("reading bath", Level::Overrun, at(900s), at(950s - 1us));  // 10 s on still count
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(970s)), "reading bath")->hushed);
    maker.raised("reading bath", Level::Overrun, at(900s), at(950s));
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(970s)), "reading bath")->hushed);
}

TEST(Heard, neverTakesTheAlarmAway)
{
    BenchMaker maker = outAt(0s);
    maker.raised(kExposure, Level::Limit, at(10s), at(11s));
    EXPECT_EQ(levelIn(alarms(maker.bench, at(12s)), kExposure), Level::Limit);
}

TEST(Heard, endsWhenTheLevelRises)
{
    BenchMaker maker = outAt(0s);
    maker.raised(kExposure, Level::HeadsUp, at(7s), at(9s));
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(10s - 1us)), kExposure)->hushed);
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(10s)), kExposure)->hushed);
    // a tap that came after the rise but before the record knew of it meant the level before
    maker.raised(kExposure, Level::HeadsUp, at(7s), at(10'001ms));
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(10'002ms)), kExposure)->hushed);
    maker.raised(kExposure, Level::Limit, at(10s), at(10'500ms));
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(11s)), kExposure)->hushed);
}

TEST(Heard, countsOnlyFromTheLevelsBeginningOn)
{
    BenchMaker maker;
    maker.reading(Verdict::Inside, 300s);
    maker.raised("reading bath", Level::HeadsUp, at(480s), at(779s));  // of the reading before
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(781s)), "reading bath")->hushed);
    maker.raised("reading bath", Level::HeadsUp, at(480s), at(780s));
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(781s)), "reading bath")->hushed);
}

// --- across a start of the machine ---

TEST(AfterAStart, timeIsTakenFromTheWallClockAndMarked)
{
    const BenchMaker maker = outInLastBoot(0s);
    EXPECT_EQ(levelIn(alarms(maker.bench, at(9'999ms)), kExposure), Level::HeadsUp);
    const auto alarm = alarmIn(alarms(maker.bench, at(12s)), kExposure);
    EXPECT_EQ(alarm->level, Level::Limit);
    EXPECT_EQ(alarm->since, at(10s).boot);
    EXPECT_EQ(alarm->left, -2s);
    EXPECT_FALSE(alarm->certain);
    EXPECT_EQ(alarms(maker.bench, at(12s)).nextChange, at(15s).boot);
}

TEST(AfterAStart, sinceMayLieBeforeThisBoot)
{
    BenchMaker maker = outInLastBoot(-2h);
    const auto alarm = alarmIn(alarms(maker.bench, at(0s)), kExposure);
    EXPECT_EQ(alarm->since, kOpening - 2h + 15s);
    EXPECT_LT(alarm->since, 0s);
}

TEST(AfterAStart, theLimitCountsAsPassedWhereTheClockCannotBeRelied)
{
    const auto check = [](auto&& distrust) {
        BenchMaker maker = outInLastBoot(0s);
        distrust(maker.bench);
        const Stamp early{.wall = at(1s).wall, .boot = 3s, .bootId = kThisBoot};
        const auto alarm = alarmIn(alarms(maker.bench, early), kExposure);
        ASSERT_TRUE(alarm);
        EXPECT_EQ(alarm->level, Level::Limit);
        EXPECT_EQ(alarm->since, 0s);  // with this boot
        EXPECT_EQ(alarm->left, -3s);
        EXPECT_FALSE(alarm->certain);
        EXPECT_EQ(alarms(maker.bench, early).nextChange, 5s);
        EXPECT_EQ(levelIn(alarms(maker.bench, shifted(early, 2s)), kExposure), Level::Overrun);
        EXPECT_EQ(countdown(maker.bench, maker.ampouleOf({1, 1}), early)->left, -3s);
    };
    check([](Bench& bench) { bench.clockTrusted = false; });
    check([](Bench& bench) { bench.untrusted = {kThisBoot}; });
    check([](Bench& bench) { bench.untrusted = {kLastBoot}; });
}

TEST(AfterAStart, anUntrustedClockLeavesThisBootsOwnTimesAlone)
{
    BenchMaker maker = outAt(0s);
    maker.bench.clockTrusted = false;
    EXPECT_FALSE(levelIn(alarms(maker.bench, at(1s)), kExposure));
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(8s)), kExposure)->certain);
}

TEST(AfterAStart, aHushGoesOnByTheWallClockIfItCanBeReliedOn)
{
    BenchMaker maker;
    maker.bench.shift->opened.at = inLastBoot(0s);
    maker.bench.waterSince = inLastBoot(0s);
    maker.raised("reading bath", Level::Overrun, inLastBoot(900s), inLastBoot(950s));
    EXPECT_TRUE(alarmIn(alarms(maker.bench, at(1000s)), "reading bath")->hushed);
    EXPECT_FALSE(alarmIn(alarms(maker.bench, at(1070s)), "reading bath")->hushed);
    maker.bench.clockTrusted = false;
    const Stamp early{.wall = at(1000s).wall, .boot = 3s, .bootId = kThisBoot};
    EXPECT_EQ(levelIn(alarms(maker.bench, early), "reading bath"), Level::Limit);
    EXPECT_FALSE(alarmIn(alarms(maker.bench, early), "reading bath")->hushed);
}

TEST(WallTime, aStepOfTheWallClockMovesNoLimitOfThisBoot)
{
    const BenchMaker maker = outAt(0s);
    Stamp jumped = at(9s);
    jumped.wall += 5h;
    EXPECT_EQ(levelIn(alarms(maker.bench, jumped), kExposure), Level::HeadsUp);
}

TEST(WallTime, decidesWhenThePlannedPullIsDue)
{
    BenchMaker maker;
    maker.bench.nextPull = at(1h).wall;
    Stamp jumped = at(1s);
    jumped.wall += 1h;
    EXPECT_EQ(levelIn(alarms(maker.bench, jumped), "next pull bench"), Level::Limit);
}

}  // namespace
}  // namespace bathside::test
