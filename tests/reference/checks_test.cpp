// The checks' statistics against published tables and worked examples; each names where it comes
// from.

#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "core/bath/heat_matter.h"
#include "core/checks/charts.h"
#include "core/checks/coverage.h"
#include "core/checks/flow.h"
#include "core/checks/injector.h"
#include "core/checks/live_cells.h"
#include "core/checks/room_air.h"
#include "core/checks/vessel.h"

namespace bathside {
namespace {

struct ZRow {
    double celsius;
    double fixedAir;  // air of 1.2 kg/m³
    double moistAir;  // 1013 hPa, 50 %
};

// Published: ISO 8655-6 annex A, factors at 1013 hPa, printed to 0.0001 (the printed table was not
// seen: 24.0 °C 1.0038 and 27.0 °C 1.0045 from memory). Six decimals computed with scipy 1.10.1.
TEST(Iso8655Test, zFactors)
{
    for (const ZRow& row :
         {ZRow{15, 1.001952, 1.001970}, ZRow{20, 1.002852, 1.002851}, ZRow{22, 1.003288, 1.003280},
          ZRow{24, 1.003766, 1.003750}, ZRow{25, 1.004020, 1.003999}, ZRow{27, 1.004556, 1.004528},
          ZRow{28, 1.004839, 1.004807}, ZRow{30, 1.005431, 1.005392}}) {
        const double water = waterDensity(row.celsius);
        EXPECT_NEAR(weighingFactor(water, 1.2), row.fixedAir, 6e-7) << row.celsius;
        const double air = airDensity(row.celsius, 1013, 50);
        EXPECT_NEAR(weighingFactor(water, air), row.moistAir, 6e-7) << row.celsius;
    }
    EXPECT_NEAR(weighingFactor(waterDensity(24), airDensity(24, 1013, 50)), 1.0038, 1e-4);
    EXPECT_NEAR(weighingFactor(waterDensity(27), airDensity(27, 1013, 50)), 1.0045, 1e-4);
}

// Published: ISO 8655-6:2002, annex A, table A.1, column of 101.3 kPa; from memory, as printed to
// 0.0001 mL/mg × 1000.
TEST(Iso8655Test, printedFactors)
{
    const auto printed = [](double celsius) {
        const double factor = weighingFactor(waterDensity(celsius), airDensity(celsius, 1013, 50));
        return std::round(1e4 * factor) / 1e4;
    };
    EXPECT_DOUBLE_EQ(printed(15), 1.0020);
    EXPECT_DOUBLE_EQ(printed(20), 1.0029);
    EXPECT_DOUBLE_EQ(printed(22), 1.0033);
    EXPECT_DOUBLE_EQ(printed(25), 1.0040);
    EXPECT_DOUBLE_EQ(printed(30), 1.0054);
}

// Constructed after ISO 8655-6: ten weights at 22 °C, Z 1.0033, 200 µL; computed with scipy 1.10.1.
TEST(Iso8655Test, systematicAndRandomError)
{
    std::vector<double> volumes{199.2, 199.8, 200.1, 199.5, 200.4,
                                199.0, 199.9, 200.2, 199.6, 199.7};
    for (double& volume : volumes)
        volume *= 1.0033e-3;
    const DoseErrors errors = errorsOf(volumes, 0.2, 0.95);
    EXPECT_NEAR(errors.mean, 0.200399142, 1e-12);
    EXPECT_NEAR(errors.systematic, 0.000399142, 1e-12);
    EXPECT_NEAR(errors.systematicPercent, 0.199571, 1e-9);
    EXPECT_NEAR(*errors.random, 0.000439115, 5e-10);
    EXPECT_NEAR(*errors.randomPercent, 0.219120, 5e-7);
    EXPECT_NEAR(errors.interval->low, 0.20008501811, 1e-11);
    EXPECT_NEAR(errors.interval->high, 0.20071326589, 1e-11);
}

struct Exact {
    int x;
    int n;
    double low;
    double high;
};

// Computed with scipy 1.10.1; 0/30, 1/20, 3/100, 4/20 and 97/100 also with R's binom.test.
TEST(ClopperPearsonTest, exactIntervals)
{
    for (const Exact& row :
         {Exact{0, 10, 0, 0.30849711}, Exact{0, 30, 0, 0.11570331},
          Exact{1, 20, 0.00126509, 0.24873276}, Exact{3, 100, 0.00622997, 0.08517605},
          Exact{4, 20, 0.05733400, 0.43661400}, Exact{5, 100, 0.01643188, 0.11283491},
          Exact{48, 50, 0.86286237, 0.99511857}, Exact{50, 50, 0.92887826, 1},
          Exact{97, 100, 0.91482395, 0.99377003}, Exact{99, 100, 0.94554061, 0.99974685}}) {
        const Interval found = shareGood({row.x, row.n}, 0.95);
        EXPECT_NEAR(found.low, row.low, 6e-9) << row.x << "/" << row.n;
        EXPECT_NEAR(found.high, row.high, 6e-9) << row.x << "/" << row.n;
    }
}

// Published: Conover, Practical Nonparametric Statistics (1971), p. 97, as R's manual of binom.test
// prints it: 682 of 925, 95 %; from memory, all seven digits.
TEST(ClopperPearsonTest, textbookExample)
{
    const Interval found = shareGood({682, 925}, 0.95);
    EXPECT_NEAR(found.low, 0.7076683, 5e-8);
    EXPECT_NEAR(found.high, 0.7654066, 5e-8);
}

// Published: NIST/SEMATECH e-Handbook 7.2.4.1, 4 of 20 at 90 %: 0.071354 and 0.401029 (from
// memory).
TEST(ClopperPearsonTest, handbookExample)
{
    const Interval found = shareGood({4, 20}, 0.90);
    EXPECT_NEAR(found.low, 0.071354, 1e-6);
    EXPECT_NEAR(found.high, 0.401029, 2e-6);
}

// Published: the usual table of zero-failure sample sizes, 1 − 0.05^(1/n) (from memory, computed);
// with misses computed with scipy 1.10.1.
TEST(SampleSizeTest, zeroFailuresAndSome)
{
    EXPECT_EQ(birdsNeeded(0.90, 0.95, 0), 29);
    EXPECT_EQ(birdsNeeded(0.95, 0.95, 0), 59);
    EXPECT_EQ(birdsNeeded(0.98, 0.95, 0), 149);
    EXPECT_EQ(birdsNeeded(0.99, 0.95, 0), 299);
    EXPECT_EQ(birdsNeeded(0.95, 0.95, 1), 93);
    EXPECT_EQ(birdsNeeded(0.95, 0.95, 2), 124);
    EXPECT_EQ(birdsNeeded(0.97, 0.90, 2), 176);
}

// Published: Garwood's table of exact Poisson limits, 95 %: 0 (0, 3.69), 10 (4.80, 18.39) (from
// memory); more digits computed with scipy 1.10.1.
TEST(PoissonTest, exactLimitsOfASinglePiece)
{
    const auto limits = [](int birds) {
        const FlowPiece piece{3'600, birds};
        return measuredFlow(std::span(&piece, 1), 0.95).interval;
    };
    EXPECT_EQ(limits(0).low, 0);
    EXPECT_NEAR(limits(0).high, 3.688879454, 1e-8);
    EXPECT_NEAR(limits(10).low, 4.795388696, 1e-8);
    EXPECT_NEAR(limits(10).high, 18.390356042, 1e-8);
    EXPECT_NEAR(limits(100).low, 81.363991, 1e-5);
}

// Computed with scipy 1.10.1: dispersion 3.1787 over five pieces, Student's t with 4 degrees.
TEST(PoissonTest, quasiPoissonOfUnevenPieces)
{
    const std::vector<FlowPiece> pieces{{600, 520}, {600, 480}, {600, 430}, {300, 270}, {600, 510}};
    const Flow flow = measuredFlow(pieces, 0.95);
    EXPECT_NEAR(flow.perHour, 2'946.6666667, 1e-6);
    EXPECT_NEAR(flow.interval.low, 2'636.38866, 1e-4);
    EXPECT_NEAR(flow.interval.high, 3'256.94467, 1e-4);
}

// Computed with scipy 1.10.1, stats.theilslopes at 95 %.
TEST(TheilSenTest, slopeAndInterval)
{
    const std::vector<LevelReading> log{{0, 30, false},     {1, 29.7, false}, {2, 29.45, false},
                                        {3.5, 28.9, false}, {5, 28.6, false}, {6, 27.2, false},
                                        {8, 27.75, false},  {9, 27.5, false}, {11, 26.8, false},
                                        {12, 26.6, false}};
    const auto found = evaporationOf(log, 0.95);
    ASSERT_TRUE(found && found->interval);
    EXPECT_NEAR(found->rate, 0.2833333333, 1e-9);
    EXPECT_NEAR(found->interval->low, 0.275, 1e-9);
    EXPECT_NEAR(found->interval->high, 0.3, 1e-9);
}

// Published: University of Nottingham's cryogen calculation (%O2 = 100 · 0.2095 (Vr − Vg) / Vr),
// rows computed for it; factor and base as named.
TEST(OxygenTest, worstCaseAndMixed)
{
    EXPECT_NEAR(oxygenAtOnce({36, 10, 700, 21}), 16.9167, 5e-5);
    EXPECT_NEAR(oxygenMixed({36, 10, 700, 21}), 17.2891, 5e-5);
    EXPECT_NEAR(oxygenAtOnce({36, 10, 694, 20.95}), 16.9113, 5e-5);
    EXPECT_NEAR(oxygenMixed({36, 10, 694, 20.95}), 17.2767, 5e-5);
    EXPECT_NEAR(oxygenAtOnce({20, 5, 694, 20.95}), 17.3152, 5e-5);
    EXPECT_NEAR(oxygenAtOnce({50, 25, 694, 20.95}), 13.6803, 5e-5);
    EXPECT_NEAR(litresTo(19.5, {20, 0, 694}), 1.9946, 5e-5);
    EXPECT_NEAR(litresTo(18, {20, 0, 694}), 4.0580, 5e-5);
    EXPECT_NEAR(litresTo(19.5, {50, 0, 694}), 4.9865, 5e-5);
}

// Published: a calculator sheet for liquid nitrogen, 1 m³, 1 L, 680 L of gas, 20.9 %: 6.7 %, and
// 0.2 L to reach 18 %.
TEST(OxygenTest, calculatorSheet)
{
    EXPECT_NEAR(oxygenAtOnce({1, 1, 680, 20.9}), 6.688, 1e-9);
    EXPECT_NEAR(litresTo(18, {1, 0, 680, 20.9}), 0.2, 0.05);
}

// Published: University of Oxford, safety policy S4/03, appendix 1: 36 m³, five vessels of 0.15
// L/day, 0.4 air changes an hour, evaporation doubled for ageing: 0.06 % less oxygen.
TEST(OxygenTest, steadyEvaporation)
{
    EXPECT_NEAR(21 - oxygenVentilated({36, 0, 700, 21}, 2 * 5 * 0.15, 0.4), 0.0638, 5e-5);
}

// Half-lives of a turkey herpesvirus vaccine in diluent, about 5 h and 1 to 3 h: from memory, so no
// card has them by default; the rows are arithmetic, 0.5^(t / half-life).
TEST(HalfLifeTest, rows)
{
    const auto left = [](double hours, double halfLife) {
        LiveCells cells;
        cells.bagHours = hours;
        cells.bagLoss = LossRate{{halfLife, halfLife}, "row"};
        return shareLeft(cells).value().low;
    };
    EXPECT_NEAR(left(0.25, 5), 0.965936, 5e-7);
    EXPECT_NEAR(left(1, 5), 0.870551, 5e-7);
    EXPECT_NEAR(left(2, 5), 0.757858, 5e-7);
    EXPECT_NEAR(left(1, 3), 0.793701, 5e-7);
    EXPECT_NEAR(left(0.5, 1), 0.707107, 5e-7);
    EXPECT_NEAR(left(2, 1), 0.250000, 5e-7);
}

// Published: NIST/SEMATECH e-Handbook 6.3.2.2, individuals chart (data from memory, results
// confirmed by a course's verification table that cites the section).
TEST(HandbookChartsTest, individuals)
{
    const std::vector<double> data{49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
    const std::vector<double> ranges{2.0, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5};
    const auto found = movingRanges(data);
    ASSERT_EQ(found.size(), ranges.size());
    for (std::size_t i = 0; i < ranges.size(); ++i)
        EXPECT_NEAR(found[i], ranges[i], 1e-9);
    const IndividualsChart chart = individualsOf(data);
    EXPECT_NEAR(chart.centre, 50.81, 1e-9);
    EXPECT_NEAR(chart.meanRange, 1.8778, 5e-5);
    EXPECT_NEAR(chart.sigma, 1.664697, 5e-7);
    EXPECT_NEAR(chart.upper, 55.8041, 5e-5);
    EXPECT_NEAR(chart.lower, 45.8159, 5e-5);
    EXPECT_NEAR(chart.rangeUpper, 6.1347, 5e-5);
}

// Published: NIST/SEMATECH e-Handbook 6.1.6: limits 8 and 20, mean 16, s 2: Cpu 0.6667, Cpl 1.3333.
TEST(HandbookChartsTest, capability)
{
    EXPECT_NEAR(capability(16, 2, 20, LimitSide::Upper), 0.6667, 5e-5);
    EXPECT_NEAR(capability(16, 2, 8, LimitSide::Lower), 1.3333, 5e-5);
}

struct RuleRow {
    const char* name;
    std::vector<double> values;
    RunRule rule;
    std::vector<std::size_t> at;
};

class RunRules : public testing::TestWithParam<RuleRow> {};

// Constructed rows for the published rules: Statistical Quality Control Handbook (1956), p. 25 ff.,
// as NIST/SEMATECH e-Handbook 6.3.2 has them, and Nelson, Journal of Quality Technology 16 (1984)
// 237 (both from memory).
TEST_P(RunRules, fireWherePublished)
{
    constexpr IndividualsChart kUnit{
        .centre = 0, .meanRange = 1.128, .sigma = 1, .upper = 3, .lower = -3, .rangeUpper = 3.685};
    const RuleRow& row = GetParam();
    std::vector<std::size_t> at;
    for (const RunSignal& signal : signalsIn(row.values, kUnit, std::span(&row.rule, 1)))
        at.push_back(signal.at);
    EXPECT_EQ(at, row.at);
}

INSTANTIATE_TEST_SUITE_P(
    Rows, RunRules,
    testing::Values(
        RuleRow{"One", {0.2, -0.5, 3.1}, RunRule::OneBeyondThree, {2}},
        RuleRow{"Two", {0.1, 2.2, 0.3, 2.1}, RunRule::TwoOfThreeBeyondTwo, {3}},
        RuleRow{"TwoOppositeSides", {2.2, -2.1, 0.5}, RunRule::TwoOfThreeBeyondTwo, {}},
        RuleRow{"Four", {1.2, 1.3, 0.2, 1.1, 1.4}, RunRule::FourOfFiveBeyondOne, {4}},
        RuleRow{"Eight", std::vector<double>(8, 0.1), RunRule::EightOnOneSide, {7}},
        RuleRow{"EightAreNotNine", std::vector<double>(8, 0.1), RunRule::NineOnOneSide, {}},
        RuleRow{"Nine", std::vector<double>(9, 0.1), RunRule::NineOnOneSide, {8}},
        RuleRow{"SixRising", {0.1, 0.2, 0.3, 0.4, 0.5, 0.6}, RunRule::SixRisingOrFalling, {5}},
        RuleRow{"ExactlyThree", {3.0}, RunRule::OneBeyondThree, {}}),
    [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace bathside
