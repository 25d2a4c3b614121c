#include "core/checks/vessel.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

TEST(DipstickTest, isStraightBetweenItsRowsAndSaysNothingBeyond)
{
    const auto dipstick = Dipstick::from({{0, 0}, {100, 4}, {500, 30}});
    ASSERT_TRUE(dipstick);
    EXPECT_DOUBLE_EQ(dipstick->litresAt(50).value(), 2);
    EXPECT_DOUBLE_EQ(dipstick->litresAt(300).value(), 17);
    EXPECT_DOUBLE_EQ(dipstick->litresAt(500).value(), 30);
    EXPECT_EQ(dipstick->litresAt(501), std::nullopt);
    EXPECT_EQ(dipstick->fullest(), 30);
    EXPECT_DOUBLE_EQ(dipstick->error(), 5 * 26.0 / 400);
}

TEST(DipstickTest, refusesATableThatDoesNotRise)
{
    EXPECT_EQ(Dipstick::from({{0, 0}}).error(), DipstickFault::TooFew);
    EXPECT_EQ(Dipstick::from({{0, 0}, {0, 4}}).error(), DipstickFault::NotRising);
    EXPECT_EQ(Dipstick::from({{0, 4}, {100, 4}}).error(), DipstickFault::NotRising);
}

std::vector<LevelReading> losing(double rate, double from, int days, double start)
{
    std::vector<LevelReading> log;
    for (int day = 0; day < days; ++day)
        log.push_back({start + day, from - rate * day, false});
    return log;
}

TEST(EvaporationTest, doesNotTakeAFillForAGain)
{
    auto log = losing(0.3, 20, 6, 0);
    auto later = losing(0.3, 30, 6, 6);
    later.front().afterFill = true;
    log.insert(log.end(), later.begin(), later.end());
    const auto evaporation = evaporationOf(log, 0.95);
    ASSERT_TRUE(evaporation);
    EXPECT_NEAR(evaporation->rate, 0.3, 1e-12);
    EXPECT_EQ(evaporation->pairs, 30U);
}

TEST(EvaporationTest, withstandsAReadingThatWasMistaken)
{
    auto log = losing(0.3, 30, 9, 0);
    log[4].litres = 12;
    EXPECT_NEAR(evaporationOf(log, 0.95)->rate, 0.3, 0.01);
}

TEST(EvaporationTest, needsTwoReadingsBetweenTheSameFills)
{
    EXPECT_EQ(evaporationOf({}, 0.95), std::nullopt);
    const std::vector<LevelReading> log{{0, 30, false}, {1, 31, true}};
    EXPECT_EQ(evaporationOf(log, 0.95), std::nullopt);
    const auto two = evaporationOf(losing(0.3, 30, 2, 0), 0.95);
    EXPECT_NEAR(two->rate, 0.3, 1e-12);
    EXPECT_FALSE(two->interval);
}

// By hand: 6 L above the minimum at 0.3, 0.2 and 0.4 L/day.
TEST(RefillTest, isDueWhenTheMinimumIsReached)
{
    const auto refill = refillIn({0.3, Interval{0.2, 0.4}, 20}, 14, 8);
    ASSERT_TRUE(refill);
    EXPECT_DOUBLE_EQ(refill->days, 20);
    EXPECT_DOUBLE_EQ(refill->earliest, 15);
    EXPECT_DOUBLE_EQ(refill->latest.value(), 30);
    EXPECT_EQ(refillIn({0.3, Interval{-0.1, 0.4}, 20}, 14, 8)->latest, std::nullopt);
    EXPECT_EQ(refillIn({0.3, std::nullopt, 1}, 8, 8)->days, 0);
    EXPECT_EQ(refillIn({-0.1, std::nullopt, 1}, 14, 8), std::nullopt);
}

TEST(VacuumTest, failsWhenTheWholeIntervalIsTooHigh)
{
    EXPECT_EQ(judged({0.4, Interval{0.3, 0.5}, 9}, 0.45), Vacuum::Sound);
    EXPECT_EQ(judged({0.6, Interval{0.4, 0.8}, 9}, 0.45), Vacuum::Suspect);
    EXPECT_EQ(judged({0.6, std::nullopt, 1}, 0.45), Vacuum::Suspect);
    EXPECT_EQ(judged({0.6, Interval{0.5, 0.7}, 9}, 0.45), Vacuum::Failing);
    EXPECT_EQ(judged({0, std::nullopt, 1}, 0.45), std::nullopt);
    EXPECT_EQ(judged({-0.1, Interval{-0.2, 0.1}, 9}, 0.45), std::nullopt);
}

}  // namespace
}  // namespace bathside
