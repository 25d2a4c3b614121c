// Judged readings against published and worked examples; each names where it comes from.

#include <fstream>
#include <string>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/bath/probe.h"
#include "core/bath/reading_case.h"

namespace bathside {
namespace {

// A probe that adds nothing of its own: the standard uncertainty is what is given as the water's
// movement.
Judged with(double y, double u, const Tolerance& tolerance)
{
    Probe probe;
    probe.points = {{y, y, 0}};
    return judged(probe, tolerance, y, {}, u);
}

Tolerance between(double low, double high, double guard = 1)
{
    return {(low + high) / 2, (high - low) / 2, guard};
}

// Published: JCGM 106:2012 (ISO/IEC Guide 98-4), section 7; the inputs are from memory, the
// probabilities were computed with scipy and agree with the printed two digits (0.92, 0.99, 0.66).
// A single limit is a tolerance whose other end is out of reach.
TEST(Jcgm106Test, conformityOfASingleUpperLimit)
{
    const Judged zener = with(-5.47, 0.05, between(-7, -5.40));
    EXPECT_NEAR(zener.conformity, 0.919243, 1e-6);
}

TEST(Jcgm106Test, conformityOfASingleLowerLimit)
{
    const Judged burst = with(509.7, 8.6, between(490, 690));
    EXPECT_NEAR(burst.conformity, 0.989010, 1e-6);
}

TEST(Jcgm106Test, conformityOfATwoSidedTolerance)
{
    const Judged oil = with(13.6, 1.8, between(12.5, 16.3));
    EXPECT_NEAR(oil.conformity, 0.662630, 2e-6);
}

// Published: manual of the open uncertainty calculator Suncal, normal 9 to 10, y = 9.8, u = 0.1.
TEST(Jcgm106Test, probabilityOutside)
{
    EXPECT_NEAR(1 - with(9.8, 0.1, between(9, 10)).conformity, 0.0227501319, 1e-10);
}

// From memory: JCGM 106, section 8.3.2: with a guard band of U = 2u a value at the acceptance limit
// is falsely accepted with 1 − Φ(2) = 2.2750 %.
TEST(Jcgm106Test, worstFalseAcceptanceAtTheAcceptanceLimit)
{
    const Judged atLimit = with(28.5, 0.25, between(25, 29));
    EXPECT_EQ(atLimit.verdict, Verdict::Inside);
    EXPECT_NEAR(1 - atLimit.conformity, 0.022750, 1e-6);
}

struct BathRow {
    double y;
    double conformity;
    Verdict verdict;
};

// Constructed, computed with scipy: tolerance 25 to 29 °C, u = 0.25, so that the acceptance
// interval is 25.5 to 28.5 °C and beyond 24.5 to 29.5 °C it is outside.
TEST(BathRowsTest, conformityAndVerdict)
{
    using enum Verdict;
    for (const BathRow& row :
         {BathRow{24.5, 0.022750, Undecided}, BathRow{25.0, 0.500000, Undecided},
          BathRow{25.4, 0.945201, Undecided}, BathRow{25.5, 0.977250, Inside},
          BathRow{27.0, 1.000000, Inside}, BathRow{28.5, 0.977250, Inside},
          BathRow{28.7, 0.884930, Undecided}, BathRow{29.0, 0.500000, Undecided},
          BathRow{29.3, 0.115070, Undecided}}) {
        const Judged result = with(row.y, 0.25, between(25, 29));
        EXPECT_NEAR(result.conformity, row.conformity, 1e-6) << row.y;
        EXPECT_EQ(result.verdict, row.verdict) << row.y;
    }
    EXPECT_EQ(with(24.49, 0.25, between(25, 29)).verdict, Outside);
    EXPECT_EQ(with(29.51, 0.25, between(25, 29)).verdict, Outside);
}

// Constructed: 26 to 28 °C with u = 0.2 accepts 26.4 to 27.6 °C; where U exceeds the half-width
// nothing is accepted.
TEST(BathRowsTest, acceptanceIntervalAndNone)
{
    const Tolerance bath = between(26, 28);
    EXPECT_EQ(with(26.4, 0.2, bath).verdict, Verdict::Inside);
    EXPECT_EQ(with(27.6, 0.2, bath).verdict, Verdict::Inside);
    EXPECT_EQ(with(26.39, 0.2, bath).verdict, Verdict::Undecided);
    EXPECT_EQ(with(27.61, 0.2, bath).verdict, Verdict::Undecided);
    const Judged coarse = with(27, 0.51, bath);
    EXPECT_EQ(coarse.verdict, Verdict::Undecided);
    EXPECT_EQ(coarse.warnings, std::vector{ReadingWarning::CannotDecide});
}

// Constructed after JCGM 100 (quadrature; a rectangle's u is its half-width / √3; k = 2 from
// memory), computed: 0.10, 0.05/√3, 0.03125/√3 and 0.08 combine to 0.1325098, U = 0.2650197.
TEST(Jcgm100Test, combinesFourContributions)
{
    Probe probe;
    probe.points = {{28, 28, 0.20}};
    probe.drift = 0.05;
    probe.resolution = 0.0625;
    EXPECT_NEAR(judged(probe, {28, 1, 1}, 28, {}, 0.08).expanded, 0.2650197, 1e-7);
}

// The public sample cases of the project's own specification of the `reading` verb, copied
// unchanged: input and what is expected, computed by an independent program.
TEST(SampleReadingsTest, agree)
{
    std::ifstream file(BATHSIDE_READINGS);
    const auto cases = nlohmann::json::parse(file);
    ASSERT_EQ(cases.size(), 6U);
    for (const auto& sample : cases) {
        const auto reading = readingCaseFrom(sample.at("input").dump());
        ASSERT_TRUE(reading) << reading.error().key;
        const auto found = nlohmann::json::parse(toJson(judged(*reading)));
        const auto& expected = sample.at("expect");
        for (const char* key : {"corrected_c", "expanded_u_c", "conformity"})
            EXPECT_NEAR(found.at(key).get<double>(), expected.at(key).get<double>(), 1e-9)
                << sample;
        EXPECT_EQ(found.at("verdict"), expected.at("verdict")) << sample;
        EXPECT_EQ(found.at("warnings"), expected.at("warnings")) << sample;
    }
}

}  // namespace
}  // namespace bathside
