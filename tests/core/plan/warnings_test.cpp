#include "core/plan/warnings.h"

#include <gtest/gtest.h>

#include "tests/core/plan/example_day.h"

namespace bathside::plan {
namespace {

using namespace std::chrono_literals;
using Warnings = std::vector<Warning>;

Warnings warningsOf(const DayInput& input)
{
    const Plan plan = planDay(input, Effort(100'000));
    EXPECT_TRUE(plan.isFeasible());
    return plan.warnings;
}

TEST(WarningsTest, areNoneForAPlainDay)
{
    EXPECT_EQ(warningsOf(test::exampleDay(1000)), Warnings());
}

TEST(WarningsTest, nameABagThatRunsThroughABreak)
{
    DayInput input = test::exampleDay(1000);
    input.lines[0].breaks = {{7h + 10min, 7h + 15min}, {7h + 25min, 7h + 40min}};
    EXPECT_EQ(warningsOf(input), (Warnings{RunsThroughBreak{{0, 0}, {7h + 10min, 7h + 15min}}}));
    input.lines[0].breaks = {{7h + 20min, 8h}};  // the last bird is done as it begins
    EXPECT_EQ(warningsOf(input), Warnings());
}

// 4,000 birds in two bags; the second, hung a minute before the break, would be too old for its
// last birds.
TEST(WarningsTest, nameALineThatStandsIdleToSpareABag)
{
    DayInput input = test::exampleDay(4000);
    input.bags = {{{400'000}, std::nullopt}};
    input.longestIdle = 5min;
    input.lines[0].breaks = {{7h + 41min, 8h + 11min}};
    EXPECT_EQ(warningsOf(input), (Warnings{IdlesToSpare{{0, 1}, 1min}}));
}

TEST(WarningsTest, nameALotThatIsUsedUp)
{
    DayInput input = test::exampleDay(2000);
    input.recipe[0].lots[0].count = 1;
    EXPECT_EQ(warningsOf(input), (Warnings{NoSpareLeft{0, 0}}));
    input.recipe[0].lots.push_back({"K08", 2000, 0, input.day});  // empty, but not used
    EXPECT_EQ(warningsOf(input), (Warnings{NoSpareLeft{0, 0}}));
}

// 2,750 birds take 55 min of 60.
TEST(WarningsTest, nameABagWithAMarginUnderFiveMinutes)
{
    EXPECT_EQ(warningsOf(test::exampleDay(2750)), Warnings());
    EXPECT_EQ(warningsOf(test::exampleDay(2751)), (Warnings{SmallMargin{{0, 0}, 5min - 1200ms}}));
}

}  // namespace
}  // namespace bathside::plan
