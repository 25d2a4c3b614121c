// Planning again during the day, by hand.

#include <gtest/gtest.h>

#include "core/plan/plan.h"
#include "tests/core/plan/example_day.h"

namespace bathside::plan {
namespace {

using namespace std::chrono_literals;
using Made = PlannedBag::Made;

LinePlan planned(const DayInput& input)
{
    const Plan plan = planDay(input, Effort(100'000));
    EXPECT_TRUE(plan.isFeasible());
    return plan.lines[0].value_or(LinePlan());
}

/// 09:12, 2,310 of 5,000 birds done; a bag of 400 mL hangs with 100 mL left (500 birds, 10 min),
/// another was mixed at 09:05.
DayInput middleOfDay()
{
    DayInput input = test::exampleDay(5000);
    input.changeover = 1min;
    input.now = 9h + 12min;
    Line& line = input.lines[0];
    line.birdsDone = 2310;
    line.openBag = MadeBag{{400'000}, {100'000}, 8h + 41min};
    line.mixedBags = {{{400'000}, {400'000}, 9h + 5min}};
    return input;
}

TEST(ReplanTest, hangsTheOpenBagThenTheMixedOneThenNewOnes)
{
    const LinePlan plan = planned(middleOfDay());
    ASSERT_EQ(plan.bags.size(), 3U);
    EXPECT_EQ(plan.bags[0].made, Made::Open);
    EXPECT_EQ(plan.bags[0].turn, (Turn{9h + 12min, 9h + 22min, 500, 0ms}));
    EXPECT_EQ(plan.bags[0].ageAtLast, 41min);
    EXPECT_EQ(plan.bags[1].made, Made::Mixed);
    EXPECT_EQ(plan.bags[1].turn, (Turn{9h + 23min, 10h + 3min, 2000, 0ms}));
    EXPECT_EQ(plan.bags[1].margin, 2min);
    EXPECT_EQ(plan.bags[2].made, Made::New);
    EXPECT_EQ(plan.bags[2].turn, (Turn{10h + 4min, 10h + 7min + 48s, 190, 0ms}));
    EXPECT_EQ(plan.worth.cost, (Cost{2000, 1, 400'000}));  // what is opened anew
}

TEST(ReplanTest, takesABagDownWhenItsOwnAgeIsUp)
{
    DayInput input = middleOfDay();
    input.lines[0].openBag->firstInDiluent = 8h + 15min;
    EXPECT_EQ(planned(input).bags[0].turn, (Turn{9h + 12min, 9h + 15min - 1200ms, 149, 0ms}));
    input.lines[0].openBag->firstInDiluent = 8h + 12min;  // too old for even one bird
    EXPECT_EQ(planned(input).bags[0].made, Made::Mixed);
    EXPECT_EQ(planned(input).bags[0].turn.firstBird, 9h + 12min);
}

TEST(ReplanTest, startsNoPullBeforeNow)
{
    DayInput input = test::exampleDay(1000);
    input.hangTime = 3min;
    input.now = 6h + 55min;  // 8 min to make it, 3 min to hang: not before 07:06
    const LinePlan plan = planned(input);
    EXPECT_EQ(plan.bags[0].turn.firstBird, 7h + 6min);
    EXPECT_EQ(plan.bags[0].pullStart, 6h + 55min);
    input.now = 6h;
    EXPECT_EQ(planned(input).bags[0].turn.firstBird, 7h);
}

TEST(ReplanTest, primesNoLineTwice)
{
    DayInput input = test::exampleDay(3000);
    input.prime = {100'000};
    input.bags = {{{400'000}, std::nullopt}};
    EXPECT_EQ(planned(input).bags[0].turn.birds, 1500);
    input.lines[0].birdsDone = 1;
    EXPECT_EQ(planned(input).bags[0].turn.birds, 2000);
}

TEST(ReplanTest, hasNothingToDoWhenAllBirdsAreDone)
{
    DayInput input = middleOfDay();
    input.lines[0].birdsDone = 5001;
    EXPECT_TRUE(planned(input).bags.empty());
}

}  // namespace
}  // namespace bathside::plan
