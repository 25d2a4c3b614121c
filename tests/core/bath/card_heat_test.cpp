#include "core/bath/card_heat.h"

#include <gtest/gtest.h>

#include "tests/support/cards.h"

namespace bathside {
namespace {

// About 80 s from the bath to slush at 28 °C: common practice.
TEST(CardHeatTest, theDefaultsGiveTheUsualTimeAtTheUsualBath)
{
    const auto slush = thawed(thawSettingOf({}, 28)).slush;
    ASSERT_TRUE(slush);
    EXPECT_NEAR(*slush, 80, 3);
}

TEST(SlushScaleTest, isOneAtTheTargetLessInWarmerWaterAndMoreInCooler)
{
    const SlushScale scale({}, {28'000});
    EXPECT_DOUBLE_EQ(scale.at({28'000}).value(), 1);
    double before = 10;
    for (std::int64_t bath = 20'000; bath <= 40'000; bath += 500) {
        const double here = scale.at({bath}).value();
        EXPECT_LT(here, before) << bath;
        before = here;
    }
}

TEST(SlushScaleTest, keepsToTheModelBetweenItsRuns)
{
    const SlushScale scale({}, {28'000});
    const double usual = *thawed(thawSettingOf({}, 28)).slush;
    for (const double bath : {22.0, 26.0, 27.0, 30.0, 37.0})
        EXPECT_NEAR(usual * *scale.at({static_cast<std::int64_t>(bath * 1000)}),
                    *thawed(thawSettingOf({}, bath)).slush, 0.3)
            << bath;
}

TEST(SlushScaleTest, saysNothingOutsideTheCardsRange)
{
    const SlushScale scale({}, {28'000});
    EXPECT_TRUE(scale.at({20'000}));
    EXPECT_FALSE(scale.at({19'999}));
    EXPECT_TRUE(scale.at({40'000}));
    EXPECT_FALSE(scale.at({40'001}));
}

TEST(SlushScaleTest, isMadeOnceForTheUsualCard)
{
    const auto& card = test::defaultCard()->content();
    EXPECT_EQ(slushScaleOf(card), slushScaleOf(card));
    Card::Content other = card;
    other.heat.film = 900;
    EXPECT_NE(slushScaleOf(other), slushScaleOf(card));
}

}  // namespace
}  // namespace bathside
