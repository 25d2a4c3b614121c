// Limits and who is judged by them. The bounds of 10 s, 90 s and 28 ± 1 °C are common practice; the
// others of the default card are from memory, to be confirmed against the label.

#include "core/bench/judge.h"

#include <gtest/gtest.h>

#include "tests/support/shift.h"

namespace bathside::test {
namespace {

struct Edge {
    std::string name;
    double seconds;
    std::optional<std::int64_t> over;  // ms
};

class ExposureEdge : public testing::TestWithParam<Edge> {};

// A limit is kept when the elapsed time is less than it: 9.999 s is none, 10.000 s a deviation of 0
// s over.
TEST_P(ExposureEdge, isJudged)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(60 + GetParam().seconds).say(moved(Step::Bath));

    const auto found = shift.all<DeviationFound>();
    ASSERT_EQ(found.size(), GetParam().over ? 1U : 0U);
    if (GetParam().over) {
        EXPECT_EQ(found[0].limit, LimitName::Exposure);
        EXPECT_EQ(found[0].over, *GetParam().over);
        EXPECT_EQ(toText(found[0].subject), "ampoule:1/1");
        EXPECT_EQ(found[0].bag->text, "B1");
    }
}

INSTANTIATE_TEST_SUITE_P(CommonPractice, ExposureEdge,
                         testing::Values(Edge{"wellInTime", 4, {}}, Edge{"justKept", 9.999, {}},
                                         Edge{"justPassed", 10.000, 0}, Edge{"late", 12.5, 2500}),
                         [](const auto& test) { return test.param.name; });

class ThawEdge : public testing::TestWithParam<Edge> {};

TEST_P(ThawEdge, isJudged)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(62).say(moved(Step::Bath));
    shift.at(62 + GetParam().seconds).say(moved(Step::Diluent));

    const auto found = shift.all<DeviationFound>();
    ASSERT_EQ(found.size(), GetParam().over ? 1U : 0U);
    if (GetParam().over) {
        EXPECT_EQ(found[0].over, *GetParam().over);
    }
}

INSTANTIATE_TEST_SUITE_P(CommonPractice, ThawEdge,
                         testing::Values(Edge{"justKept", 89.999, {}},
                                         Edge{"justPassed", 90.000, 0}, Edge{"late", 94.2, 4200}),
                         [](const auto& test) { return test.param.name; });

TEST(JudgeTest, eachAmpouleIsJudgedOnItsOwn)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(150).say(moved(Step::Diluent, {1}));
    shift.at(157).say(moved(Step::Diluent, {2}));

    const auto found = shift.all<DeviationFound>();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(toText(found[0].subject), "ampoule:1/2");
    EXPECT_EQ(found[0].over, 2000);
}

TEST(JudgeTest, aDeviationIsWrittenOnceByTheFactThatEndsIt)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(75);
    EXPECT_TRUE(shift.all<DeviationFound>().empty());  // until then the alarm stands
    shift.say(moved(Step::Bath));
    shift.at(140).say(moved(Step::Diluent));
    shift.at(150).say(moved(Step::Bagged));
    EXPECT_EQ(shift.all<DeviationFound>().size(), 1U);
}

TEST(JudgeTest, lateAndThenAbandonedIsALossAndNoDeviation)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(170).say(LoseAmpoule{1, LossReason::Abandoned});
    EXPECT_TRUE(shift.all<DeviationFound>().empty());
}

TEST(JudgeTest, anUntimedStepIsJudgedAsLateAsTheRecordAllows)
{
    BenchShift shift;
    shift.open().readyBag("B1").at(60).say(out({1}));
    shift.at(140).say(moved(Step::Diluent));  // *in bath* was never tapped

    const auto found = shift.all<DeviationFound>();
    ASSERT_EQ(found.size(),
              1U);  // 80 s since out: the thaw limit is kept, the exposure is not shown to be
    EXPECT_EQ(found[0].limit, LimitName::Exposure);
    EXPECT_EQ(found[0].over, 70'000);
}

TEST(JudgeTest, aBagPastItsLimitIsJudgedWhenItIsDown)
{
    BenchShift shift;
    shift.open().madeUp("B1", 0);
    shift.say(HangBag{{}, {"A"}});
    shift.at(87 + 3600 + 90).say(TakeBagDown{{}, DownReason::Expired, {50'000}});

    const auto found = shift.all<DeviationFound>();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].limit, LimitName::InUse);
    EXPECT_EQ(found[0].over, 90'000);
    EXPECT_EQ(found[0].bag->text, "B1");
}

struct BathCase {
    std::string name;
    std::optional<std::int64_t> reading;  // m°C, by a thermometer without calibration
    bool deviation;
};
class BathAtPullTest : public testing::TestWithParam<BathCase> {};

TEST_P(BathAtPullTest, isOneDeviationOfThePull)
{
    BenchShift shift;
    shift.open().readyBag("B1");
    if (GetParam().reading)
        shift.say(TakeReading{{"hand"}, MilliCelsius{*GetParam().reading}});
    shift.at(60).say(out({1, 2}));
    shift.at(65).say(moved(Step::Bath, {1}));
    shift.say(moved(Step::Bath, {2}));

    const auto found = shift.all<DeviationFound>();
    ASSERT_EQ(found.size(), GetParam().deviation ? 1U : 0U);
    if (GetParam().deviation) {
        EXPECT_EQ(found[0].limit, LimitName::BathAtPull);
        EXPECT_EQ(toText(found[0].subject), "pull:1");
        EXPECT_EQ(found[0].over, 1500);
    }
}

INSTANTIATE_TEST_SUITE_P(CommonPractice, BathAtPullTest,
                         testing::Values(BathCase{"onTarget", 28'000, false},
                                         BathCase{"noReading", {}, false},
                                         BathCase{"tooWarm", 30'500, true},
                                         BathCase{"tooCold", 25'500, true}),
                         [](const auto& test) { return test.param.name; });

TEST(JudgeTest, coldDiluentIsADeviationAtTheStart)
{
    BenchShift shift;
    shift.open().say(StartBag{{"B1"}, {400'000}, {"D1"}, MilliCelsius{16'500}});
    const auto found = shift.all<DeviationFound>();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].limit, LimitName::Diluent);
    EXPECT_EQ(found[0].over, 1500);
}

TEST(JudgeTest, aComponentMayHaveItsOwnLimits)
{
    const auto card = cardWith(R"({"recipe": [
        {"component": "serotype 3"},
        {"component": "serotype 1", "thaw": {"heads_up_ms": 60000, "at_ms": 70000, "overrun_ms": 75000}}]})");
    BenchShift shift(card);
    shift.open().readyBag("B1").at(60).say(
        TakeOut{{{1, {"serotype 3"}, {"K1"}}, {2, {"serotype 1"}, {"R1"}}}});
    shift.at(65).say(moved(Step::Bath));
    shift.at(145).say(moved(Step::Diluent));

    const auto found = shift.all<DeviationFound>();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(toText(found[0].subject), "ampoule:1/2");
    EXPECT_EQ(found[0].over, 10'000);
}

TEST(JudgeTest, aNewCardTakesEffectAtTheNextBagAndNeverWithinOne)
{
    BenchShift shift;
    shift.open().readyBag("B1");
    shift.say(AdoptCard{
        cardWith(R"({"version": 2, "limits": {"thaw": {"at_ms": 60000, "heads_up_ms": 50000}}})")
            ->document()});
    shift.at(60).say(out({1}));
    shift.at(65).say(moved(Step::Bath));
    shift.at(145).say(moved(Step::Bagged));
    EXPECT_TRUE(shift.all<DeviationFound>().empty());

    shift.at(300).readyBag("B2");
    shift.say(out({1}));
    shift.at(305).say(moved(Step::Bath));
    shift.at(385).say(moved(Step::Bagged));
    EXPECT_EQ(shift.all<DeviationFound>().size(), 1U);
    EXPECT_NE(shift.recorder.events.back().card, shift.recorder.events[5].card);
}

}  // namespace
}  // namespace bathside::test
