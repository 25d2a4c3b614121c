// Points of charts, counted and timed by hand from what was tapped.

#include "core/record/chart_points.h"

#include <gmock/gmock.h>

#include "core/checks/dose_measured.h"
#include "tests/core/record/sample_day.h"
#include "tests/support/shift.h"

namespace bathside {
namespace {

using test::BenchShift;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Optional;

std::vector<ChartPoint> pointsOf(const std::vector<Event>& events)
{
    ChartFold fold;
    for (const Event& event : events)
        fold.take(event, {"bench 1"});
    return fold.finish();
}

std::vector<ChartPoint> ofSeries(const std::vector<ChartPoint>& all, ChartSeries series)
{
    std::vector<ChartPoint> found;
    std::ranges::copy_if(all, std::back_inserter(found),
                         [series](const ChartPoint& point) { return point.series == series; });
    return found;
}

std::vector<std::optional<double>> valuesOf(const std::vector<ChartPoint>& points)
{
    std::vector<std::optional<double>> values;
    for (const ChartPoint& point : points)
        values.push_back(point.value);
    return values;
}

// 06:10:00.000 → 06.250 and, after its correction, 09.000; then → 06:11:20.001 and 06:11:39.999.
TEST(ChartPointsTest, ofADayWithCorrectionsAndABrokenAmpoule)
{
    const auto all = pointsOf(test::sampleDay().events);
    const auto out = ofSeries(all, ChartSeries::OutToBath);
    const auto diluent = ofSeries(all, ChartSeries::BathToDiluent);
    EXPECT_THAT(valuesOf(out), ElementsAre(Optional(6.25), Optional(9.0)));
    EXPECT_THAT(valuesOf(diluent), ElementsAre(Optional(73.751), Optional(90.999)));

    ASSERT_EQ(out.size(), 2U);
    EXPECT_EQ(out[0].seq, 7);
    EXPECT_EQ(out[0].pull, 1);
    EXPECT_THAT(out[0].ampoules, ElementsAre(1));
    EXPECT_THAT(out[0].lots, ElementsAre(LotId{"K08"}));  // after its correction
    EXPECT_EQ(out[0].person, PersonId{"AB"});
    EXPECT_EQ(out[0].bench, StationId{"bench 1"});
    EXPECT_EQ(out[1].seq, 8);
    EXPECT_EQ(out[1].at, *fromRfc3339("2026-03-05T06:10:09Z"));
}

// No thermometer was read that day, and its second shift had no pull.
TEST(ChartPointsTest, aPullWithoutAReadingHasNoTemperature)
{
    const auto bath = ofSeries(pointsOf(test::sampleDay().events), ChartSeries::BathAtPull);
    EXPECT_THAT(valuesOf(bath), ElementsAre(std::nullopt));
    EXPECT_THAT(bath.front().ampoules, ElementsAre(1, 2, 3));
}

class ChartPointsOfAShift : public testing::Test {
protected:
    [[nodiscard]] std::vector<ChartPoint> points(ChartSeries series) const
    {
        return ofSeries(pointsOf(shift.recorder.events), series);
    }

    BenchShift shift;
};

TEST_F(ChartPointsOfAShift, ampoulesThatWentTogetherAreOneValueWithTheirLimits)
{
    shift.open().madeUp("B1", 60);
    const auto out = points(ChartSeries::OutToBath);
    ASSERT_EQ(out.size(), 1U);
    EXPECT_THAT(out[0].value, Optional(5.0));
    EXPECT_THAT(out[0].ampoules, ElementsAre(1, 2));
    EXPECT_THAT(out[0].lots, ElementsAre(LotId{"K1"}, LotId{"R1"}));
    EXPECT_THAT(out[0].upper, Optional(10.0));  // the default card's
    EXPECT_EQ(out[0].lower, std::nullopt);

    const auto diluent = points(ChartSeries::BathToDiluent);
    ASSERT_EQ(diluent.size(), 1U);
    EXPECT_THAT(diluent[0].value, Optional(82.0));
    EXPECT_THAT(diluent[0].upper, Optional(90.0));
}

TEST_F(ChartPointsOfAShift, ampoulesThatWentOneByOneAreValuesOfTheirOwn)
{
    shift.open().readyBag("B1").at(60);
    shift.say(test::out({1, 2}));
    shift.at(64.5).say(test::moved(Step::Bath, {1}));
    shift.at(67).say(test::moved(Step::Bath, {2}));
    EXPECT_THAT(valuesOf(points(ChartSeries::OutToBath)),
                ElementsAre(Optional(4.5), Optional(7.0)));
    EXPECT_THAT(points(ChartSeries::BathToDiluent), IsEmpty());
}

// *In bath* was never tapped: *opened* implies it, and nobody knows when.
TEST_F(ChartPointsOfAShift, anUntimedStepHasNoValue)
{
    shift.open().readyBag("B1").at(60);
    shift.say(test::out({1}));
    shift.at(140).say(test::moved(Step::Opened));
    shift.at(145).say(test::moved(Step::Diluent));
    EXPECT_THAT(valuesOf(points(ChartSeries::OutToBath)), ElementsAre(std::nullopt));
    EXPECT_THAT(valuesOf(points(ChartSeries::BathToDiluent)), ElementsAre(std::nullopt));
    EXPECT_THAT(valuesOf(points(ChartSeries::BathAtPull)), ElementsAre(std::nullopt));
}

TEST_F(ChartPointsOfAShift, theBathIsThatOfThePullsFirstAmpoule)
{
    shift.open().readyBag("B1").at(60);
    shift.say(TakeReading{{"hand"}, MilliCelsius{28'300}});
    shift.say(test::out({1, 2}));
    shift.at(64).say(test::moved(Step::Bath, {1}));
    shift.say(TakeReading{{"hand"}, MilliCelsius{27'100}});
    shift.at(66).say(test::moved(Step::Bath, {2}));
    const auto bath = points(ChartSeries::BathAtPull);
    ASSERT_EQ(bath.size(), 1U);
    EXPECT_THAT(bath[0].value, Optional(28.3));
    EXPECT_THAT(bath[0].lower, Optional(27.0));  // 28 ± 1 °C on the default card
    EXPECT_THAT(bath[0].upper, Optional(29.0));
    EXPECT_EQ(bath[0].pull, 1);
}

TEST_F(ChartPointsOfAShift, anOldReadingTellsNothing)
{
    shift.open().readyBag("B1");
    shift.say(TakeReading{{"hand"}, MilliCelsius{28'300}});
    shift.at(3'600).say(test::out({1}));
    shift.at(3'604).say(test::moved(Step::Bath));
    EXPECT_THAT(valuesOf(points(ChartSeries::BathAtPull)), ElementsAre(std::nullopt));
}

// 2.05 mL of ten shots of 0.2 mL: each 0.205 mL, 2.5 % too much; a cylinder knows no spread.
TEST_F(ChartPointsOfAShift, aDoseCheckIsItsErrorAgainstItsOwnLimits)
{
    shift.open().madeUp("B1", 60);
    shift.say(HangBag{BagId{"B1"}, {"A"}});
    const DoseMeasured measured{.dose = {200}, .how = CollectedShots{10, {2'050}, {100}}};
    shift.say(CheckDose{LineId{"A"}, true, documentOf(measured)});
    const auto error = points(ChartSeries::DoseError);
    ASSERT_EQ(error.size(), 1U);
    EXPECT_NEAR(error[0].value.value_or(0), 2.5, 1e-9);
    EXPECT_THAT(error[0].lower, Optional(-5.0));  // kUsualDoseLimits
    EXPECT_THAT(error[0].upper, Optional(5.0));
    EXPECT_EQ(error[0].line, LineId{"A"});
    EXPECT_EQ(error[0].pull, 0);
    EXPECT_THAT(error[0].lots, ElementsAre(LotId{"K1"}, LotId{"R1"}));
    EXPECT_THAT(valuesOf(points(ChartSeries::DoseSpread)), ElementsAre(std::nullopt));
}

TEST_F(ChartPointsOfAShift, aDoseThatWasOnlyLookedAtHasNoValue)
{
    shift.open();
    shift.say(CheckDose{LineId{"A"}, true, {}});
    EXPECT_THAT(valuesOf(points(ChartSeries::DoseError)), ElementsAre(std::nullopt));
}

TEST_F(ChartPointsOfAShift, whatWasTakenBackIsNoPoint)
{
    shift.open().readyBag("B1").at(60);
    shift.say(test::out({1}));
    shift.at(64).say(test::moved(Step::Bath));
    shift.at(65).say(TakeBack{});
    EXPECT_THAT(points(ChartSeries::OutToBath), IsEmpty());
}

TEST_F(ChartPointsOfAShift, aPointIsOfWhoeverWasOnDutyAndOfItsOwnShift)
{
    shift.open().madeUp("B1", 60);
    shift.say(TakeBagDown{BagId{"B1"}, DownReason::Finished, {}});
    shift.at(400).say(CloseShift{});
    shift.at(500);
    shift.open().say(TakeDuty{{"CD"}});
    shift.madeUp("B1", 560);
    const auto out = points(ChartSeries::OutToBath);
    ASSERT_EQ(out.size(), 2U);
    EXPECT_EQ(out[0].person, PersonId{"AB"});
    EXPECT_EQ(out[1].person, PersonId{"CD"});
    EXPECT_EQ(out[1].pull, 1);
    EXPECT_LT(out[0].seq, out[1].seq);
}

}  // namespace
}  // namespace bathside
