#include "core/checks/flow.h"

#include <vector>

#include <gtest/gtest.h>

namespace bathside {
namespace {

Flow flowOf(std::vector<FlowPiece> pieces) { return measuredFlow(pieces, 0.95); }

// By hand: 1,500 birds in half an hour.
TEST(FlowTest, isBirdsOverRunningTime)
{
    EXPECT_DOUBLE_EQ(flowOf({{600, 500}, {600, 480}, {600, 520}}).perHour, 3'000);
}

TEST(FlowTest, evenCountsAreNoMoreCertainThanPoisson)
{
    const Flow even = flowOf({{600, 500}, {600, 500}, {600, 500}});
    const Flow single = flowOf({{1'800, 1'500}});
    EXPECT_DOUBLE_EQ(even.interval.low, single.interval.low);
    EXPECT_DOUBLE_EQ(even.interval.high, single.interval.high);
}

TEST(FlowTest, unevenCountsAreLessCertain)
{
    const Flow even = flowOf({{600, 500}, {600, 500}, {600, 500}});
    const Flow uneven = flowOf({{600, 300}, {600, 700}, {600, 500}});
    EXPECT_LT(uneven.interval.low, even.interval.low);
    EXPECT_GT(uneven.interval.high, even.interval.high);
    EXPECT_GE(uneven.interval.low, 0);
}

TEST(FlowTest, aLineThatStandsEmptiesNothing)
{
    const Flow standing = flowOf({{600, 0}});
    EXPECT_EQ(standing.perHour, 0);
    EXPECT_GT(standing.interval.high, 0);
    EXPECT_EQ(emptyIn(standing, 100), std::nullopt);
}

// By hand: 1,000 birds at 3,000, 2,500 and 4,000 an hour.
TEST(FlowTest, saysWhenTheBagIsEmpty)
{
    const auto empty = emptyIn({3'000, {2'500, 4'000}}, 1'000);
    ASSERT_TRUE(empty);
    EXPECT_DOUBLE_EQ(empty->seconds, 1'200);
    EXPECT_DOUBLE_EQ(empty->earliest, 900);
    EXPECT_DOUBLE_EQ(empty->latest.value(), 1'440);
    EXPECT_EQ(emptyIn({3'000, {0, 4'000}}, 1'000)->latest, std::nullopt);
}

}  // namespace
}  // namespace bathside
