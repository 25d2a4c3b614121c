#include "core/alarms/course.h"

#include <gtest/gtest.h>

#include "tests/support/benches.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

TEST(Origin, isTheBootClockItselfWithinThisBoot)
{
    const Origin origin = originOf({}, at(5s), at(90s));
    EXPECT_EQ(origin.at, at(5s).boot);
    EXPECT_TRUE(origin.certain);
    EXPECT_TRUE(origin.known);
}

TEST(Origin, isReckonedFromWallTimeAcrossAStart)
{
    const Origin origin = originOf({}, inLastBoot(-3h), at(10s));
    EXPECT_EQ(origin.at, kOpening - 3h);
    EXPECT_FALSE(origin.certain);
    EXPECT_TRUE(origin.known);
}

// The wall clock of a stamp has whole ms, rounded down: what is reckoned from it is never early.
TEST(Origin, isNeverEarlyByTheFractionThatWallTimeLacks)
{
    const Origin origin = originOf({}, inLastBoot(0s), at(10s + 999us));
    EXPECT_GE(origin.at, kOpening);
    EXPECT_LT(origin.at, kOpening + 1ms);
}

TEST(Origin, isThisBootsBeginningWhereWallTimeCannotBeReliedOn)
{
    Bench bench;
    bench.clockTrusted = false;
    const Origin origin = originOf(bench, inLastBoot(0s), at(10s));
    EXPECT_EQ(origin.at, 0s);
    EXPECT_FALSE(origin.known);
}

TEST(Begins, leaveOutLevelsThatTheCardDoesNotHave)
{
    const Begins begins = beginsFrom({.at = 100s}, {.headsUp = {}, .at = 10s, .overrun = {}});
    EXPECT_EQ(begins, (Begins{std::nullopt, Micros(110s), std::nullopt}));
}

AlarmCourse course(Begins begins)
{
    return {
        .cause = LimitName::Swirl, .subject = {}, .begins = begins, .limitAt = {}, .birdsLeft = {}};
}

TEST(AlarmCourse, hasTheHighestLevelThatHasBegun)
{
    const AlarmCourse all = course({Micros(1s), Micros(2s), Micros(3s)});
    EXPECT_EQ(all.level(1s - 1us), std::nullopt);
    EXPECT_EQ(all.level(1s), Level::HeadsUp);
    EXPECT_EQ(all.level(2s), Level::Limit);
    EXPECT_EQ(all.level(3s), Level::Overrun);
    EXPECT_EQ(course({Micros(2s), Micros(2s), std::nullopt}).level(2s), Level::Limit);
}

TEST(AlarmCourse, risesNextToALevelAboveTheOneItHas)
{
    const AlarmCourse all = course({Micros(1s), Micros(2s), Micros(3s)});
    EXPECT_EQ(all.nextRise(0s), 1s);
    EXPECT_EQ(all.nextRise(1s), 2s);
    EXPECT_EQ(all.nextRise(3s), std::nullopt);
    EXPECT_EQ(course({std::nullopt, Micros(2s), std::nullopt}).nextRise(0s), 2s);
    EXPECT_EQ(course({Micros(5s), Micros(2s), std::nullopt}).nextRise(3s), std::nullopt);
}

}  // namespace
}  // namespace bathside::test
