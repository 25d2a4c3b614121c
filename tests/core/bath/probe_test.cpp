#include "core/bath/probe.h"

#include <algorithm>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace bathside {
namespace {

using namespace std::chrono;
using enum ReadingWarning;

constexpr sys_days kDay = 2026y / March / 5;

Probe probe()
{
    Probe made;
    made.due = 2026y / September / 1;
    made.resolution = 0.1;
    made.drift = 0.05;
    made.points = {{0.1, 0.0, 0.06}, {28.4, 28.0, 0.06}, {38.2, 38.0, 0.10}};
    return made;
}

Judged at(const Probe& of, double indicated, const Tolerance& tolerance = {28, 1, 1},
          double stability = 0)
{
    return judged(of, tolerance, indicated, kDay, stability);
}

bool warns(const Judged& result, ReadingWarning warning)
{
    return std::ranges::find(result.warnings, warning) != result.warnings.end();
}

struct CorrectionCase {
    const char* name;
    double indicated;
    double corrected;
    double certificate;  // U there
    bool beyond;
};

class Corrects : public testing::TestWithParam<CorrectionCase> {};

TEST_P(Corrects, linearlyAndConstantlyBeyond)
{
    Probe bare = probe();
    bare.resolution = 0;
    bare.drift = 0;
    const Judged result = at(bare, GetParam().indicated);
    EXPECT_NEAR(result.corrected, GetParam().corrected, 1e-12);
    EXPECT_NEAR(result.expanded, GetParam().certificate, 1e-12);
    EXPECT_EQ(warns(result, BeyondRange), GetParam().beyond);
}

// Constructed: by hand from the three points.
INSTANTIATE_TEST_SUITE_P(Probe, Corrects,
                         testing::Values(CorrectionCase{"Below", -5, -5.1, 0.06, true},
                                         CorrectionCase{"FirstPoint", 0.1, 0.0, 0.06, false},
                                         CorrectionCase{"Between", 14.25, 14.0, 0.06, false},
                                         CorrectionCase{"MiddlePoint", 28.4, 28.0, 0.06, false},
                                         CorrectionCase{"Halfway", 33.3, 33.0, 0.08, false},
                                         CorrectionCase{"LastPoint", 38.2, 38.0, 0.10, false},
                                         CorrectionCase{"Above", 40, 39.8, 0.10, true}),
                         [](const auto& test) { return std::string(test.param.name); });

TEST(JudgedTest, isBeyondAnythingButASinglePoint)
{
    Probe single = probe();
    single.points = {{37, 37, 0.1}};
    EXPECT_FALSE(warns(at(single, 37), BeyondRange));
    EXPECT_TRUE(warns(at(single, 36.9), BeyondRange));
    EXPECT_TRUE(warns(at(single, 37.1), BeyondRange));
}

TEST(JudgedTest, takesACalibrationThroughItsDueDay)
{
    Probe dated = probe();
    dated.due = kDay;
    EXPECT_FALSE(warns(at(dated, 28), Overdue));
    dated.due = kDay - days(1);
    EXPECT_TRUE(warns(at(dated, 28), Overdue));
}

TEST(JudgedTest, neverFindsAnUncalibratedProbeInside)
{
    Probe bare;
    EXPECT_EQ(at(bare, 28).verdict, Verdict::Undecided);
    EXPECT_EQ(at(bare, 28, {28, 1, 0}).verdict, Verdict::Undecided);
    EXPECT_EQ(at(bare, 31).verdict, Verdict::Outside);
    EXPECT_EQ(at(bare, 28).warnings, std::vector{NotCalibrated});
    EXPECT_DOUBLE_EQ(at(bare, 28.1).corrected, 28.1);
}

TEST(JudgedTest, cannotDecideWhereTheGuardBandLeavesNoRoom)
{
    Probe coarse = probe();
    coarse.points = {{28, 28, 1.2}};
    EXPECT_EQ(at(coarse, 28).verdict, Verdict::Undecided);
    EXPECT_TRUE(warns(at(coarse, 28), CannotDecide));
    EXPECT_FALSE(warns(at(coarse, 28, {28, 2, 1}), CannotDecide));
    // The guard factor 0 is plain comparison: there is always room.
    EXPECT_EQ(at(coarse, 28, {28, 1, 0}).verdict, Verdict::Inside);
    EXPECT_FALSE(warns(at(coarse, 28, {28, 1, 0}), CannotDecide));
}

TEST(JudgedTest, givesDecimalLimitsToTheirOwnSide)
{
    Probe exact;
    exact.points = {{28.4, 28.0, 0}};  // 28.4 − 0.4 is not quite 28 in binary
    EXPECT_EQ(at(exact, 29.4, {28, 1, 0}).verdict, Verdict::Inside);
    EXPECT_EQ(at(exact, 27.4, {28, 1, 0}).verdict, Verdict::Inside);
    EXPECT_EQ(at(exact, 29.401, {28, 1, 0}).verdict, Verdict::Outside);
    EXPECT_EQ(at(exact, 27.399, {28, 1, 0}).verdict, Verdict::Outside);
    EXPECT_EQ(at(exact, 29.4, {28, 1, 0}).conformity, 1);
    EXPECT_EQ(at(exact, 29.5, {28, 1, 0}).conformity, 0);
}

// Whatever the uncertainty: going up, a bath is outside, undecided, inside, undecided, outside,
// each once; and the verdict says of the probability what JCGM 106 says of a guard band of U = 2u:
// at most Φ(−2) of error.
TEST(JudgedTest, partsTheScaleIntoRegions)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> of(0, 1);
    const double tail = std::erfc(std::sqrt(2)) / 2;
    for (int trial = 0; trial < 300; ++trial) {
        Probe any;
        any.points = {{28, 28 + of(random) - 0.5, 0.01 + of(random)}};
        any.resolution = of(random) / 4;
        any.drift = of(random) / 10;
        const Tolerance tolerance{28, 0.2 + 2 * of(random), 1};
        const double stability = of(random) / 10;
        std::vector<Verdict> regions;
        for (double indicated = 20; indicated < 36; indicated += 0.01) {
            const Judged result = at(any, indicated, tolerance, stability);
            if (regions.empty() || regions.back() != result.verdict)
                regions.push_back(result.verdict);
            if (result.verdict == Verdict::Inside) {
                EXPECT_GE(result.conformity, 1 - 2 * tail - 1e-6);
            }
            if (result.verdict == Verdict::Outside) {
                EXPECT_LE(result.conformity, tail + 1e-6);
            }
        }
        using enum Verdict;
        const bool canDecide = !warns(at(any, 28, tolerance, stability), CannotDecide);
        const std::vector<Verdict> withRoom{Outside, Undecided, Inside, Undecided, Outside};
        const std::vector<Verdict> withoutRoom{Outside, Undecided, Outside};
        const bool roomIsWide =
            tolerance.tolerance - at(any, 28, tolerance, stability).expanded > 0.02;
        if (!canDecide || roomIsWide) {  // narrower than the sweep's step: either is right
            EXPECT_EQ(regions, canDecide ? withRoom : withoutRoom) << trial;
        }
    }
}

TEST(JudgedTest, isNeverUndecidedWithoutAGuardBand)
{
    using enum Verdict;
    std::vector<Verdict> regions;
    for (double indicated = 20; indicated < 36; indicated += 0.01)
        if (const auto verdict = at(probe(), indicated, {28, 1, 0}).verdict;
            regions.empty() || regions.back() != verdict)
            regions.push_back(verdict);
    EXPECT_EQ(regions, (std::vector{Outside, Inside, Outside}));
}

}  // namespace
}  // namespace bathside
