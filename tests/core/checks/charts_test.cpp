#include "core/checks/charts.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace bathside {
namespace {

constexpr IndividualsChart kUnit{
    .centre = 0, .meanRange = 1.128, .sigma = 1, .upper = 3, .lower = -3, .rangeUpper = 3.685};

std::vector<std::size_t> firing(RunRule rule, std::vector<double> values)
{
    std::vector<std::size_t> at;
    for (const RunSignal& signal : signalsIn(values, kUnit, std::span(&rule, 1)))
        at.push_back(signal.at);
    return at;
}

using Places = std::vector<std::size_t>;

TEST(RunRulesTest, looksAtOneSideAtATime)
{
    using enum RunRule;
    EXPECT_EQ(firing(TwoOfThreeBeyondTwo, {-2.1, 0, -2.2, 2.1}), (Places{2}));
    EXPECT_EQ(firing(FourOfFiveBeyondOne, {1.1, 1.1, -1.1, 1.1, -1.1}), (Places{}));
    EXPECT_EQ(firing(EightOnOneSide, {1, 1, 1, 1, 0, 1, 1, 1, 1}), (Places{}));
}

// A value that is itself inside does not complete a pattern of those before it.
TEST(RunRulesTest, signalsOnlyAtAValueThatIsBeyond)
{
    EXPECT_EQ(firing(RunRule::TwoOfThreeBeyondTwo, {2.1, 2.1, 0.1}), (Places{1}));
    EXPECT_EQ(firing(RunRule::FourOfFiveBeyondOne, {1.1, 1.1, 1.1, 1.1, 0.1}), (Places{3}));
}

TEST(RunRulesTest, risesFallsAndAlternates)
{
    using enum RunRule;
    EXPECT_EQ(firing(SixRisingOrFalling, {6, 5, 4, 3, 2, 1, 0}), (Places{5, 6}));
    EXPECT_EQ(firing(SixRisingOrFalling, {1, 2, 3, 3, 4, 5, 6}), (Places{}));
    std::vector<double> zigzag(14);
    for (std::size_t i = 0; i < zigzag.size(); ++i)
        zigzag[i] = i % 2 == 0 ? 0.5 : -0.5;
    EXPECT_EQ(firing(FourteenAlternating, zigzag), (Places{13}));
    zigzag[5] = 0.7;
    EXPECT_EQ(firing(FourteenAlternating, zigzag), (Places{}));
}

TEST(RunRulesTest, closeAndFar)
{
    using enum RunRule;
    std::vector<double> close(15, 0.9);
    EXPECT_EQ(firing(FifteenWithinOne, close), (Places{14}));
    close[3] = 1.0;
    EXPECT_EQ(firing(FifteenWithinOne, close), (Places{}));
    EXPECT_EQ(firing(EightBeyondOne, {1.1, -1.1, 1.1, -1.1, 1.1, -1.1, 1.1, -1.1}), (Places{7}));
}

TEST(RunRulesTest, eachCanBeSwitchedOff)
{
    const std::vector<double> values{0, 3.5};
    EXPECT_TRUE(signalsIn(values, kUnit, {}).empty());
}

TEST(IndividualsTest, aLevelBaselineHasNoScatterAndAnyOtherValueIsBeyond)
{
    const std::vector<double> values{5, 5, 5, 5.1};
    const auto chart = individualsOf(std::span(values).first(3));
    EXPECT_EQ(chart.sigma, 0);
    const RunRule rule = RunRule::OneBeyondThree;
    EXPECT_EQ(signalsIn(values, chart, std::span(&rule, 1)),
              (std::vector<RunSignal>{{RunRule::OneBeyondThree, 3}}));
}

}  // namespace
}  // namespace bathside
