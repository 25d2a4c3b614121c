// Lines as balances send them, made up here: number, unit g or mg (SI brochure, 9th edition), a
// mark for a weight that is still. What is a shot is worked out by hand.

#include "core/checks/weight_line.h"

#include <vector>

#include <gtest/gtest.h>

namespace bathside {
namespace {

struct Row {
    const char* name;
    const char* line;
    std::int64_t tenths;
};

class WeightRow : public testing::TestWithParam<Row> {};

TEST_P(WeightRow, isReadInTenthsOfAMilligram)
{
    const auto weight = weightIn({}, GetParam().line);
    ASSERT_TRUE(weight) << nameOf(weight.error());
    EXPECT_EQ(weight->tenthsOfMilligram, GetParam().tenths);
}

INSTANTIATE_TEST_SUITE_P(
    Weights, WeightRow,
    testing::Values(Row{"Grams", "0.1991 g", 1'991}, Row{"Milligrams", "199.1 mg", 1'991},
                    Row{"Comma", "  0,1991 g\r", 1'991}, Row{"NoUnit", "0.1991", 1'991},
                    Row{"Plus", "+   0.1991 g", 1'991}, Row{"MinusApart", "-   0.0012 g", -12},
                    Row{"Minus", "N,-0.0012g", -12}, Row{"Capitals", "0.1991 G", 1'991},
                    Row{"Whole", "20 g", 200'000}, Row{"Zero", "0.0000 g", 0},
                    Row{"DateBefore", "2026-03-05 07:12 0.1991 g", 1'991},
                    Row{"CounterBefore", "N1: 0.1991", 1'991},
                    Row{"MarkAfter", "0.1991 g still", 1'991}),
    [](const auto& test) { return std::string(test.param.name); });

struct Fault {
    const char* name;
    std::string line;
    WeightFault fault;
};

class WeightFaultRow : public testing::TestWithParam<Fault> {};

TEST_P(WeightFaultRow, isNoWeight)
{
    const auto weight = weightIn({}, GetParam().line);
    ASSERT_FALSE(weight) << weight->tenthsOfMilligram;
    EXPECT_EQ(weight.error(), GetParam().fault);
}

INSTANTIATE_TEST_SUITE_P(
    Weights, WeightFaultRow,
    testing::Values(Fault{"Empty", "", WeightFault::Empty},
                    Fault{"Blank", " \r", WeightFault::Empty},
                    Fault{"Words", "hello", WeightFault::Unreadable},
                    Fault{"TwoNumbers", "0.1991 0.2", WeightFault::Unreadable},
                    Fault{"TwoWeights", "0.1991 g 0.2 g", WeightFault::Unreadable},
                    Fault{"Kilograms", "0.1991 kg", WeightFault::OtherUnit},
                    Fault{"Ounces", "0.1991 oz", WeightFault::OtherUnit},
                    Fault{"Dashes", "-------", WeightFault::Overload},
                    Fault{"Hats", "^^^^^^", WeightFault::Overload},
                    Fault{"Word", "OL", WeightFault::Overload},
                    Fault{"Long", std::string(201, '1'), WeightFault::Unreadable},
                    Fault{"Huge", "1000000 g", WeightFault::Unreadable}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(WeightLineTest, aLineWithoutAUnitIsInTheOneThatIsSet)
{
    EXPECT_EQ(weightIn({.unit = WeightUnit::Milligrams}, "199.1")->tenthsOfMilligram, 1'991);
    EXPECT_EQ(weightIn({.unit = WeightUnit::Milligrams}, "0.1991 g")->tenthsOfMilligram, 1'991);
}

TEST(WeightLineTest, aMarkTellsWhetherItIsStill)
{
    const WeightFormat still{.stillness = Stillness::StillMark, .mark = "ok"};
    EXPECT_TRUE(weightIn(still, "ok 0.1991 g")->isStill);
    EXPECT_FALSE(weightIn(still, "0.1991 g")->isStill);
    const WeightFormat moving{.stillness = Stillness::MovingMark, .mark = "~"};
    EXPECT_FALSE(weightIn(moving, "~ 0.1991 g")->isStill);
    EXPECT_TRUE(weightIn(moving, "0.1991 g")->isStill);
}

using Shots = std::vector<std::int64_t>;

constexpr std::int64_t kShot = 2'000;  // 200 mg

Shots shotsOf(Stillness stillness, const std::vector<Weighed>& weights)
{
    ShotWeigher weigher(stillness, kShot);
    Shots shots;
    for (const Weighed& weight : weights) {
        if (const auto shot = weigher.take(weight))
            shots.push_back(*shot);
    }
    return shots;
}

TEST(ShotWeigherTest, shotsThatAreTaredAwayCountOnce)
{
    EXPECT_EQ(shotsOf(Stillness::StillMark, {{0},
                                             {900, false},
                                             {1'991},
                                             {1'991},
                                             {1'992},
                                             {0},
                                             {1'500, false},
                                             {1'996},
                                             {2},
                                             {1'989}}),
              (Shots{1'991, 1'996, 1'987}));
}

TEST(ShotWeigherTest, shotsThatStayInTheVesselCountByTheDifference)
{
    EXPECT_EQ(shotsOf(Stillness::StillMark, {{0}, {1'991}, {3'000, false}, {3'987}, {5'980}}),
              (Shots{1'991, 1'996, 1'993}));
}

// What evaporates between two shots is not part of the next one.
TEST(ShotWeigherTest, driftIsNoShotAndNoPartOfOne)
{
    EXPECT_EQ(shotsOf(Stillness::StillMark, {{0}, {1'991}, {1'986}, {1'980}, {3'980}}),
              (Shots{1'991, 2'000}));
}

TEST(ShotWeigherTest, aVesselPutOnOrTakenOffIsNoShot)
{
    EXPECT_EQ(shotsOf(Stillness::StillMark, {{200'000}, {201'995}, {0}, {-201'995}, {0}, {2'003}}),
              (Shots{1'995, 2'003}));
}

// A vessel of 300 mg, not tared yet; the shot that was left out, as weighing goes on after it.
TEST(ShotWeigherTest, whatIsOnThePanAtFirstIsNoShot)
{
    EXPECT_EQ(shotsOf(Stillness::StillMark, {{3'000}, {0}, {1'991}}), Shots{1'991});
    EXPECT_EQ(shotsOf(Stillness::StillMark, {{1'991}, {1'991}, {3'984}}), Shots{1'993});
    EXPECT_EQ(shotsOf(Stillness::ThreeAlike, {{1'991}, {1'991}, {1'991}, {1'991}}), Shots{});
}

TEST(ShotWeigherTest, aShotIsTwiceTheDoseAtMost)
{
    EXPECT_EQ(shotsOf(Stillness::StillMark, {{0}, {4'000}, {0}, {4'001}}), Shots{4'000});
    EXPECT_EQ(shotsOf(Stillness::EachLine, {{4'001}, {4'000}}), Shots{4'000});
}

TEST(ShotWeigherTest, withoutAMarkThreeLinesAlikeAreStill)
{
    EXPECT_EQ(shotsOf(Stillness::ThreeAlike, {{0}, {0}, {0}, {1'400}, {1'980}, {1'984}, {1'991}}),
              (Shots{1'991}));
    EXPECT_EQ(shotsOf(Stillness::ThreeAlike, {{0}, {0}, {0}, {1'400}, {1'991}, {1'991}}), Shots{});
}

TEST(ShotWeigherTest, aLineThatIsNoWeightBreaksTheRow)
{
    ShotWeigher weigher(Stillness::ThreeAlike, kShot);
    for (int i = 0; i < 3; ++i)
        EXPECT_FALSE(weigher.take({0}));
    EXPECT_FALSE(weigher.take({1'991}));
    EXPECT_FALSE(weigher.take({1'991}));
    weigher.miss();
    EXPECT_FALSE(weigher.take({1'991}));
    EXPECT_FALSE(weigher.take({1'991}));
    EXPECT_EQ(weigher.take({1'991}), 1'991);
}

TEST(ShotWeigherTest, aBalanceThatSendsOnItsKeySendsShots)
{
    EXPECT_EQ(shotsOf(Stillness::EachLine, {{1'991}, {1'991}, {0}, {1'996}, {300'000}}),
              (Shots{1'991, 1'991, 1'996}));
}

}  // namespace
}  // namespace bathside
