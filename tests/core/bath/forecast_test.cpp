#include "core/bath/forecast.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/cards.h"

namespace bathside {
namespace {

const BathRules& bathRules() { return test::defaultCard()->content().bath; }

HeatRules smallBath()
{
    HeatRules heat;
    heat.waterGrams = 2'000;
    return heat;
}

TEST(ForecastTest, goesFromOneToAsManyAsAskedEachDeeperThanTheOneBefore)
{
    const BathForecast forecast = forecastOf({}, bathRules(), {28, 0.2}, 5);
    ASSERT_EQ(forecast.pulls.size(), 5U);
    double before = 0;
    for (const PullForecast& pull : forecast.pulls) {
        ASSERT_TRUE(pull.dip);
        EXPECT_GT(pull.dip->depth, before);
        before = pull.dip->depth;
    }
}

// 28 ± 1 °C (common practice) with U = 0.2 °C is inside from 27.2 to 28.8 °C: spec, verdict.
TEST(ForecastTest, aPullStaysInsideDownToTheGuardBand)
{
    const BathForecast forecast = forecastOf(smallBath(), bathRules(), {28, 0.2}, 12);
    EXPECT_DOUBLE_EQ(forecast.lowest, 27.2);
    EXPECT_DOUBLE_EQ(forecast.highest, 28.8);
    EXPECT_GT(forecast.most, 0);
    ASSERT_LT(forecast.most, 12);
    for (const PullForecast& pull : forecast.pulls)
        EXPECT_EQ(pull.staysInside, pull.dip->end >= 27.2) << pull.ampoules;
}

TEST(ForecastTest, aBathThatIsNotInsideTakesNone)
{
    EXPECT_EQ(forecastOf({}, bathRules(), {27.1, 0.2}, 1).most, 0);
    EXPECT_EQ(forecastOf({}, bathRules(), {29.5, 0.2}, 1).most, 0);
    EXPECT_EQ(forecastOf({}, bathRules(), {28, 1.2}, 1).most, 0);  // U leaves no room
}

TEST(ForecastTest, theCoursesGoOnUntilTheBathIsBack)
{
    const BathForecast forecast = forecastOf(smallBath(), bathRules(), {28, 0.2}, 6);
    for (const PullForecast& pull : forecast.pulls) {
        ASSERT_FALSE(pull.course.empty());
        EXPECT_NEAR(pull.course.back().celsius, 28, 0.05) << pull.ampoules;
        EXPECT_NEAR(pull.unheated.back().celsius, pull.dip->end, 0.02) << pull.ampoules;
        EXPECT_LE(pull.course.back().seconds, forecast.seconds);
    }
}

TEST(ForecastTest, aCupOfWaterFreezesAndHasNoCourse)
{
    HeatRules cup;
    cup.waterGrams = 50;
    const BathForecast forecast = forecastOf(cup, bathRules(), {28, 0.2}, 20);
    EXPECT_FALSE(forecast.pulls.back().dip);
    EXPECT_TRUE(forecast.pulls.back().course.empty());
}

// About 80 s at 28 °C: common practice.
TEST(SlushCurveTest, fallsWithTheBathAndMeetsTheUsualTime)
{
    const auto curve = slushCurve({});
    ASSERT_GT(curve.size(), 5U);
    EXPECT_DOUBLE_EQ(curve.front().celsius, 20);
    EXPECT_DOUBLE_EQ(curve.back().celsius, 40);
    EXPECT_TRUE(std::ranges::is_sorted(curve, std::ranges::greater(), &SlushPoint::seconds));
    const auto usual = std::ranges::find(curve, kUsualSlush.celsius, &SlushPoint::celsius);
    ASSERT_NE(usual, curve.end());
    EXPECT_NEAR(usual->seconds, kUsualSlush.seconds, 3);
}

}  // namespace
}  // namespace bathside
