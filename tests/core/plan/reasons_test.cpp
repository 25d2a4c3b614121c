#include "core/plan/reasons.h"

#include <gtest/gtest.h>

#include "core/plan/plan.h"
#include "tests/core/plan/example_day.h"

namespace bathside::plan {
namespace {

using namespace std::chrono_literals;
using Reasons = std::vector<Reason>;

Reasons reasonsOf(const DayInput& input)
{
    const Plan plan = planDay(input, Effort(100'000));
    EXPECT_FALSE(plan.isFeasible());
    EXPECT_EQ(plan.totals.dosesOpened, 0);
    return plan.lines[0] ? Reasons() : plan.lines[0].error();
}

// 6,000 birds are three bags of 400 mL, or two of which one is of 800 mL (60 min are 2,999 birds):
// three ampoules of 2,000 doses in any case.
TEST(ReasonsTest, countsTheAmpoulesThatAreMissing)
{
    DayInput input = test::exampleDay(6000);
    input.recipe[0].lots[0].count = 1;
    EXPECT_EQ(reasonsOf(input), (Reasons{AmpoulesMissing{0, 6000, 2}}));
    input.recipe[0].lots[0].expires = input.day - std::chrono::days(1);
    EXPECT_EQ(reasonsOf(input), (Reasons{AmpoulesMissing{0, 6000, 3}}));
    input.recipe[0].lots.clear();
    EXPECT_EQ(reasonsOf(input), (Reasons{AmpoulesMissing{0, 6000, std::nullopt}}));
}

TEST(ReasonsTest, namesEachComponentThatIsShort)
{
    DayInput input = test::exampleDay(6000);
    input.recipe.push_back({"serotype 2", {{"S1", 1000, 0, input.day}}});
    input.recipe.push_back({"serotype 1", {{"R1", 1000, 4, input.day}}});
    EXPECT_EQ(reasonsOf(input),
              (Reasons{AmpoulesMissing{1, 6000, 6}, AmpoulesMissing{2, 6000, 2}}));
}

TEST(ReasonsTest, countsTheBagsThatAreMissingOfTheSizeThatTakesFewest)
{
    DayInput input = test::exampleDay(6000);
    input.bags = {{{400'000}, 1}, {{200'000}, 0}};
    EXPECT_EQ(reasonsOf(input), (Reasons{BagsMissing{MicroLitres{400'000}, 2}}));
    input.bags.clear();
    EXPECT_EQ(reasonsOf(input), (Reasons{BagsMissing{std::nullopt, 0}}));
}

TEST(ReasonsTest, saysThatPrimingOrTheResidualTakesAll)
{
    DayInput input = test::exampleDay(6000);
    input.residual = {300'000};
    input.prime = {500'000};
    EXPECT_EQ(reasonsOf(input), (Reasons{PrimingTakesAll{{800'200}}}));
    input.residual = {800'000};
    EXPECT_EQ(reasonsOf(input), (Reasons{ResidualTakesAll{{800'200}}}));
}

// One bird takes 1.2 s, and has to be earlier than the limit.
TEST(ReasonsTest, saysByHowMuchTheLimitIsTooShort)
{
    DayInput input = test::exampleDay(6000);
    input.hangTime = 30min;
    input.benchSlack = 30min - 1200ms;
    EXPECT_EQ(reasonsOf(input), (Reasons{LimitTooShort{1ms}}));
    input.benchSlack = 31min;
    EXPECT_EQ(reasonsOf(input), (Reasons{LimitTooShort{61'201ms}}));
}

// At 07:48:00 the first 400 mL are done, after a minute it is 11 min to a break that no bag
// outlasts: standing still for it would do.
TEST(ReasonsTest, saysHowLongTheLineWouldHaveToStandIdle)
{
    DayInput input = test::exampleDay(2001);
    input.bags = {{{400'000}, std::nullopt}};
    input.changeover = 1min;
    input.lines[0].start = 7h + 19min - 1s;
    input.lines[0].breaks = {{8h, 9h}};
    EXPECT_EQ(reasonsOf(input), (Reasons{BreakInTheWay{1min}}));
    input.longestIdle = 1min;
    EXPECT_TRUE(planDay(input, Effort(100'000)).isFeasible());
}

// 2,000 birds from a bag of 400 mL, or 1,000 from one of 200 mL, which would take an ampoule each.
TEST(ReasonsTest, namesWhateverWouldDoByItselfWhereNothingIsShortByItself)
{
    DayInput input = test::exampleDay(4000);
    input.bags = {{{400'000}, 1}, {{200'000}, 5}};
    input.recipe[0].lots[0].count = 2;
    EXPECT_EQ(reasonsOf(input),
              (Reasons{AmpoulesMissing{0, 4000, 1}, BagsMissing{MicroLitres{400'000}, 1}}));
}

TEST(ReasonsTest, givesTheBoundOfWhatIsTooLarge)
{
    const Plan plan = planDay(test::exampleDay(6000), Effort(1));
    ASSERT_FALSE(plan.lines[0]);
    ASSERT_EQ(plan.lines[0].error().size(), 1U);
    EXPECT_EQ(std::get<Undecided>(plan.lines[0].error()[0]).atLeast.doses, 6000);
}

TEST(ReasonsTest, aLineThatCannotBeDoneTakesNothingFromTheNext)
{
    DayInput input = test::exampleDay(6000);
    input.lines.push_back(input.lines[0]);
    input.lines[1].name = "B";
    input.lines[1].birds = 2000;
    input.recipe[0].lots[0].count = 1;
    const Plan plan = planDay(input, Effort(100'000));
    EXPECT_FALSE(plan.lines[0]);
    ASSERT_TRUE(plan.lines[1]);
    EXPECT_EQ(plan.lines[1]->worth.cost, (Cost{2000, 1, 400'000}));
    EXPECT_FALSE(plan.isFeasible());
}

}  // namespace
}  // namespace bathside::plan
