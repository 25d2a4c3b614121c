#include "core/plan/line_rules.h"

#include <gtest/gtest.h>

#include "tests/core/plan/example_day.h"

namespace bathside::plan {
namespace {

using namespace std::chrono_literals;

// 3,000 birds an hour are 1.2 s each.
TEST(LineClockTest, skipsBreaksAndEndsWhereOneBegins)
{
    const LineClock clock({{8h, 8h + 20min}}, 3000);
    EXPECT_EQ(clock.endOf(7h, 60min), 8h);
    EXPECT_EQ(clock.endOf(7h, 60min + 1ms), 8h + 20min + 1ms);
    EXPECT_EQ(clock.endOf(8h, 1min), 8h + 21min);
    EXPECT_EQ(clock.endOf(8h + 20min, 1min), 8h + 21min);
    EXPECT_EQ(clock.workBetween(7h + 50min, 8h + 30min), 20min);
    EXPECT_EQ(clock.workBetween(8h + 5min, 8h + 10min), 0min);
    EXPECT_EQ(clock.workBetween(9h, 8h), 0min);
}

TEST(LineClockTest, takesTouchingAndOverlappingBreaksForOneAndEmptyOnesForNone)
{
    const LineClock clock(
        {{9h, 9h + 10min}, {8h, 8h}, {9h + 10min, 9h + 30min}, {9h - 5min, 9h + 5min}}, 3000);
    EXPECT_EQ(clock.working(8h), 8h);
    EXPECT_EQ(clock.working(9h - 5min), 9h + 30min);
    EXPECT_EQ(clock.working(9h + 30min), 9h + 30min);
    EXPECT_EQ(clock.breaksAfter(8h), 1);
    EXPECT_EQ(*clock.breakAfter(8h), (Break{9h - 5min, 9h + 30min}));
    EXPECT_EQ(clock.breakAfter(9h + 30min), nullptr);
}

TEST(LineClockTest, roundsWorkUpAndBirdsDown)
{
    const LineClock clock({}, 2200);
    EXPECT_EQ(clock.workFor(1), 1637ms);  // 3,600,000 / 2,200 = 1,636.36…
    EXPECT_EQ(clock.birdsIn(1636ms), 0);
    EXPECT_EQ(clock.birdsIn(1637ms), 1);
    EXPECT_EQ(clock.workFor(11), 18s);
    EXPECT_EQ(clock.birdsIn(18s), 11);
    EXPECT_EQ(clock.workFor(0), 0ms);
}

struct Dilution {
    const char* name;
    Count volume;  // µL
    Count dose;    // µL
    Count doses;
};

class DilutionTest : public testing::TestWithParam<Dilution> {};

// Common practice: what a bag makes is its volume divided by the volume per bird; 0.2 mL under the
// skin of a day-old chick is usual. Two ampoules of 2,000 doses go into 800 mL.
TEST_P(DilutionTest, volumeDividedByDoseIsDoses)
{
    DayInput input = test::exampleDay(1);
    input.dose = {GetParam().dose};
    const LineRules rules(input, input.lines[0]);
    EXPECT_EQ(rules.birdsIn({GetParam().volume}, Tubes::Full), GetParam().doses);
}

INSTANTIATE_TEST_SUITE_P(CommonPractice, DilutionTest,
                         testing::Values(Dilution{"Bag200", 200'000, 200, 1000},
                                         Dilution{"Bag400", 400'000, 200, 2000},
                                         Dilution{"Bag800", 800'000, 200, 4000},
                                         Dilution{"Bag1000", 1'000'000, 200, 5000},
                                         Dilution{"Dose0_1", 200'000, 100, 2000},
                                         Dilution{"Dose0_25", 500'000, 250, 2000},
                                         Dilution{"NotWhole", 400'100, 300, 1333}),
                         [](const auto& test) { return std::string(test.param.name); });

TEST(LineRulesTest, losesTheResidualInEveryBagAndThePrimeInTheFirst)
{
    DayInput input = test::exampleDay(5000);
    input.residual = {8000};
    input.prime = {20'000};
    const LineRules rules(input, input.lines[0]);
    EXPECT_EQ(rules.birdsIn({400'000}, Tubes::Empty), 1860);  // (400 − 8 − 20) / 0.2
    EXPECT_EQ(rules.birdsIn({400'000}, Tubes::Full), 1960);
    EXPECT_EQ(rules.birdsIn({28'100}, Tubes::Empty), 0);
    EXPECT_EQ(rules.birdsIn({5000}, Tubes::Full), 0);
    EXPECT_EQ(rules.tubes(5000), Tubes::Empty);
    EXPECT_EQ(rules.tubes(4999), Tubes::Full);
}

Turn onlyTurn(const Turns& turns)
{
    EXPECT_EQ(std::distance(turns.begin(), turns.end()), 1);
    return *turns.begin();
}

// 60 min less 3, 2 and 5 are 50 min: the 2,500th bird would be done at 50 min sharp, which is not
// earlier than that.
TEST(LineRulesTest, hasItsLastBirdEarlierThanTheLimit)
{
    DayInput input = test::exampleDay(5000);
    input.hangTime = 3min;
    input.diluteTime = 2min;
    input.benchSlack = 5min;
    const LineRules rules(input, input.lines[0]);
    EXPECT_EQ(onlyTurn(rules.newBag({800'000}, 7h, 5000)),
              (Turn{7h, 7h + 50min - 1200ms, 2499, 0ms}));
}

TEST(LineRulesTest, goesOnAtOnceOrAfterTheNextBreak)
{
    DayInput input = test::exampleDay(5000);
    input.longestIdle = 10min;
    input.lines[0].breaks = {{8h, 8h + 30min}};
    const LineRules rules(input, input.lines[0]);
    const Turns turns = rules.newBag({800'000}, 7h + 50min, 2000);
    ASSERT_EQ(std::distance(turns.begin(), turns.end()), 2);
    // At once: 10 min before the break and, until 08:49:59.999, 19 min after it.
    EXPECT_EQ(turns.begin()[0], (Turn{7h + 50min, 8h + 50min - 1200ms, 1499, 0ms}));
    EXPECT_EQ(turns.begin()[1], (Turn{8h + 30min, 9h + 10min, 2000, 10min}));
    EXPECT_EQ(onlyTurn(rules.newBag({800'000}, 7h + 50min - 1ms, 2000)).firstBird,
              7h + 50min - 1ms);
    EXPECT_EQ(onlyTurn(rules.newBag({800'000}, 8h + 10min, 2000)).firstBird, 8h + 30min);
}

TEST(LineRulesTest, hangsNoBagThatWouldServeNoBird)
{
    DayInput input = test::exampleDay(5000);
    input.lines[0].breaks = {{8h, 9h + 1min}};
    const LineRules rules(input, input.lines[0]);
    const Turns none = rules.newBag({800'000}, 8h - 1s, 2000);
    EXPECT_EQ(none.begin(), none.end());
}

}  // namespace
}  // namespace bathside::plan
