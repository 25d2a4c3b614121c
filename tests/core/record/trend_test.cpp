// Charts over time against the NIST/SEMATECH e-Handbook's individuals chart (6.3.2.2; its data from
// memory, as in tests/reference/checks_test.cpp, which checks the figures themselves).

#include "core/record/trend.h"

#include <gmock/gmock.h>

namespace bathside {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const std::vector<double> kHandbook{49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
constexpr RunRule kBeyond[]{RunRule::OneBeyondThree};

ChartPoint point(Seq seq, std::optional<double> value, const char* person = "AB",
                 const char* lot = "K07")
{
    ChartPoint made;
    made.series = ChartSeries::BathToDiluent;
    made.value = value;
    made.seq = seq;
    made.person = {person};
    made.bench = {"bench 1"};
    made.lots = {LotId{lot}};
    made.upper = 60;
    return made;
}

/// From event 101 on, one event each.
TrendPoints handbook()
{
    TrendPoints points;
    for (const double value : kHandbook)
        points.all.push_back(point(101 + static_cast<Seq>(points.all.size()), value));
    points.days = {{1, 1'000}};
    return points;
}

const TrendWish kAll{.series = ChartSeries::BathToDiluent};

TEST(TrendTest, limitsComeFromThePointsShownWhereNobodyChoseABaseline)
{
    const Trend trend = trendOf(handbook(), kAll, {}, kBeyond);
    EXPECT_EQ(trend.from, LimitsFrom::PointsShown);
    EXPECT_EQ(trend.based, 10U);
    ASSERT_TRUE(trend.chart);
    EXPECT_NEAR(trend.chart->centre, 50.81, 1e-9);
    EXPECT_NEAR(trend.chart->upper, 55.8041, 5e-5);
    EXPECT_NEAR(trend.chart->lower, 45.8159, 5e-5);
    EXPECT_NEAR(trend.chart->rangeUpper, 6.1347, 5e-5);
    EXPECT_THAT(trend.breaks, IsEmpty());
    EXPECT_THAT(trend.wideRanges, IsEmpty());
}

TEST(TrendTest, ofTheBaselineWhereThereIsOne)
{
    TrendPoints points = handbook();
    points.all.push_back(point(111, 56));    // above 55.8
    points.all.push_back(point(112, 49.8));  // 6.2 below the one before: above 6.13
    const Trend trend = trendOf(points, kAll, {{"bath to diluent", {101, 110}}}, kBeyond);
    EXPECT_EQ(trend.from, LimitsFrom::Baseline);
    EXPECT_EQ(trend.baseline, "bath to diluent");
    EXPECT_EQ(trend.based, 10U);
    ASSERT_TRUE(trend.chart);
    EXPECT_NEAR(trend.chart->upper, 55.8041, 5e-5);
    EXPECT_EQ(trend.breaks, (std::vector<RunSignal>{{RunRule::OneBeyondThree, 10}}));
    EXPECT_THAT(trend.wideRanges, ElementsAre(11));
}

// The baseline's days need not be those that are shown.
TEST(TrendTest, aBaselineOfOtherDaysGivesLimitsButIsNotShown)
{
    TrendPoints points = handbook();
    points.days = {{200, 300}};
    points.all.push_back(point(201, 56));
    const Trend trend = trendOf(points, kAll, {{"bath to diluent", {101, 110}}}, kBeyond);
    ASSERT_EQ(trend.points.size(), 1U);
    EXPECT_EQ(trend.points[0].seq, 201);
    EXPECT_EQ(trend.based, 10U);
    EXPECT_EQ(trend.breaks, (std::vector<RunSignal>{{RunRule::OneBeyondThree, 0}}));
}

TEST(TrendTest, onesOwnBaselineGoesBeforeThatOfAll)
{
    TrendPoints points = handbook();
    for (Seq seq = 121; seq <= 130; ++seq)
        points.all.push_back(point(seq, 70 + static_cast<double>(seq % 2), "CD"));
    const TrendWish wish{.series = ChartSeries::BathToDiluent, .person = {"CD"}};
    const std::map<std::string, Baseline> general{{"bath to diluent", {101, 110}}};
    std::map<std::string, Baseline> both = general;
    both["bath to diluent, person CD"] = {101, 130};

    EXPECT_NEAR(trendOf(points, wish, general, kBeyond).chart->centre, 50.81, 1e-9);
    const Trend own = trendOf(points, wish, both, kBeyond);
    EXPECT_EQ(own.baseline, "bath to diluent, person CD");
    EXPECT_EQ(own.based, 10U);  // of CD's alone
    EXPECT_NEAR(own.chart->centre, 70.5, 1e-9);
}

TEST(TrendTest, isOfThePersonBenchAndLotThatAreWanted)
{
    TrendPoints points = handbook();
    points.all.push_back(point(111, 40, "CD"));
    points.all.push_back(point(112, 41, "AB", "K08"));
    const auto shown = [&](TrendWish wish) {
        wish.series = ChartSeries::BathToDiluent;
        return trendOf(points, wish, {}, {}).points.size();
    };
    EXPECT_EQ(shown({}), 12U);
    EXPECT_EQ(shown({.person = {"AB"}}), 11U);
    EXPECT_EQ(shown({.lot = {"K08"}}), 1U);
    EXPECT_EQ(shown({.person = {"CD"}, .lot = {"K08"}}), 0U);
    EXPECT_EQ(shown({.bench = {"bench 1"}}), 12U);
    EXPECT_EQ(shown({.bench = {"bench 2"}}), 0U);
    EXPECT_EQ(trendOf(points, {.series = ChartSeries::OutToBath}, {}, {}).points.size(), 0U);
}

TEST(TrendTest, nineValuesGiveNoLimits)
{
    TrendPoints points = handbook();
    points.all[4].value.reset();
    const Trend trend = trendOf(points, kAll, {}, kUsualRules);
    EXPECT_EQ(trend.points.size(), 9U);
    EXPECT_EQ(trend.without, 1U);
    EXPECT_FALSE(trend.chart);
    EXPECT_THAT(trend.breaks, IsEmpty());
    EXPECT_THAT(trend.capability, IsEmpty());
}

// (60 − 50.81) / (3 × 1.664697) and (50.81 − 45) / (3 × 1.664697), by hand.
TEST(TrendTest, capabilityIsAgainstTheLimitsOfTheLastPoint)
{
    TrendPoints points = handbook();
    points.all[0].upper = 55;
    const Trend upper = trendOf(points, kAll, {}, {});
    ASSERT_EQ(upper.capability.size(), 1U);
    EXPECT_EQ(upper.capability[0].side, LimitSide::Upper);
    EXPECT_EQ(upper.capability[0].limit, 60);
    EXPECT_NEAR(upper.capability[0].capability, 1.8402, 5e-5);

    points.all.back().lower = 45;
    const Trend both = trendOf(points, kAll, {}, {});
    ASSERT_EQ(both.capability.size(), 2U);
    EXPECT_EQ(both.capability[0].side, LimitSide::Lower);
    EXPECT_NEAR(both.capability[0].capability, 1.1634, 5e-5);
}

TEST(TrendTest, whereNothingScattersThereIsNoCapability)
{
    TrendPoints points = handbook();
    for (ChartPoint& each : points.all)
        each.value = 50;
    const Trend trend = trendOf(points, kAll, {}, {});
    ASSERT_TRUE(trend.chart);
    EXPECT_THAT(trend.capability, IsEmpty());
}

TEST(TrendTest, aRuleThatIsSwitchedOffSaysNothing)
{
    TrendPoints points = handbook();
    for (Seq seq = 111; seq <= 118; ++seq)
        points.all.push_back(point(seq, 51));
    const std::map<std::string, Baseline> base{{"bath to diluent", {101, 110}}};
    constexpr RunRule kSide[]{RunRule::EightOnOneSide};
    EXPECT_FALSE(trendOf(points, kAll, base, kSide).breaks.empty());
    EXPECT_THAT(trendOf(points, kAll, base, kBeyond).breaks, IsEmpty());
}

TEST(TrendTest, eachChartHasANameOfItsOwn)
{
    EXPECT_EQ(chartNameOf(kAll), "bath to diluent");
    EXPECT_EQ(chartNameOf({.series = ChartSeries::DoseError,
                           .person = {"AB"},
                           .bench = {"bench 1"},
                           .lot = {"K07"}}),
              "dose error, person AB, bench bench 1, lot K07");
}

}  // namespace
}  // namespace bathside
