#include "app/cli/plan_words.h"

#include <gtest/gtest.h>

namespace bathside::cli {
namespace {

using namespace plan;
using namespace std::chrono_literals;

DayInput twoLines()
{
    DayInput input;
    input.lines.resize(2);
    input.lines[0].name = "A";
    input.lines[1].name = "B";
    input.recipe = {{"serotype 3", {{"K07", 2000, 30, {}}}}, {"serotype 2", {{"S1", 1000, 5, {}}}}};
    return input;
}

TEST(PlanWordsTest, haveASentenceForEveryReason)
{
    const DayInput input = twoLines();
    EXPECT_EQ(sentenceOf(input, AmpoulesMissing{1, 6000, 3}),
              "Not enough ampoules of serotype 2 for 6000 birds: 3 missing.");
    EXPECT_EQ(sentenceOf(input, AmpoulesMissing{0, 1, std::nullopt}),
              "Not enough ampoules of serotype 3 for 1 bird.");
    EXPECT_EQ(sentenceOf(input, BagsMissing{MicroLitres{400'500}, 2}),
              "Not enough diluent bags: 2 more of 400.5 mL would do.");
    EXPECT_EQ(sentenceOf(input, BagsMissing{}), "Not enough diluent bags.");
    EXPECT_EQ(sentenceOf(input, StoresNotEnough{}),
              "What is left in stores is not enough: more than one thing is short.");
    EXPECT_EQ(sentenceOf(input, PrimingTakesAll{{28'200}}),
              "Priming takes more than any bag holds: a bag of 28.2 mL would do.");
    EXPECT_EQ(sentenceOf(input, ResidualTakesAll{{8200}}),
              "What stays in a bag leaves no dose in any of them: a bag of 8.2 mL would do.");
    EXPECT_EQ(
        sentenceOf(input, LimitTooShort{61'201ms}),
        "The limit is too short for any bag at this rate: with 61.201 s more, or so much less "
        "of hang time, dilute time and bench slack, one bird could be done.");
    EXPECT_EQ(
        sentenceOf(input, BreakInTheWay{12min}),
        "No bag lasts through the break that it would hang in: if the line may stand idle for "
        "12 min, it can be done.");
    EXPECT_EQ(sentenceOf(input, BreakInTheWay{}),
              "No bag lasts through the break that it would hang in.");
    EXPECT_EQ(sentenceOf(input, Undecided{{4000, 2, 800'000}}),
              "Too large to be planned exactly: no plan opens fewer than 4000 doses.");
    EXPECT_EQ(sentenceOf(input, Unexplained{}),
              "It cannot be done; what is missing is too large a question to be answered exactly.");
}

TEST(PlanWordsTest, haveASentenceForEveryWarning)
{
    const DayInput input = twoLines();
    EXPECT_EQ(sentenceOf(input, RunsThroughBreak{{1, 2}, {24h + 10min, 25h}}),
              "Bag 3 of line B runs through the break at 24:10:00.");
    EXPECT_EQ(sentenceOf(input, IdlesToSpare{{0, 1}, 90s}),
              "Line A stands idle for 1.5 min before bag 2, to spare a bag.");
    EXPECT_EQ(sentenceOf(input, NoSpareLeft{1, 0}),
              "No spare ampoule is left of lot S1 (serotype 2).");
    EXPECT_EQ(sentenceOf(input, SmallMargin{{0, 0}, 5min - 1ms}),
              "Bag 1 of line A has a margin of only 4.99 min.");
}

TEST(PlanWordsTest, sayWhatTheBenchWouldNeed)
{
    const DayInput input = twoLines();
    Plan plan{
        {LinePlan(), failure(std::vector<Reason>{BagsMissing{}, StoresNotEnough{}})}, {}, {}, {}};
    plan.bench.cannotMeet = BagPlace{1, 0};
    plan.bench.preparersNeeded = 3;
    plan.bench.slackNeeded = 12min;
    const std::string text = forPeople(input, plan);
    EXPECT_NE(text.find("Line B cannot be done. Not enough diluent bags. What is left in stores is "
                        "not enough: more than one thing is short.\n"),
              std::string::npos)
        << text;
    EXPECT_NE(text.find("Bench: Bag 1 of line B cannot be made in time; 3 preparers would do, or a "
                        "bench slack of 12 min.\n"),
              std::string::npos)
        << text;
}

}  // namespace
}  // namespace bathside::cli
