#include "core/bath/heat_budget.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/bath/heat_case.h"
#include "core/bath/heat_fit.h"
#include "core/bath/heat_matter.h"
#include "core/bath/thaw_medium.h"

namespace bathside {
namespace {

const HeatBudget kBudget{{0.002, 0.003}, {4, 800, 100}, 28, kCryogenCelsius, kGlassHeat};

TEST(HeatBudgetTest, keepsTheHeat)
{
    for (const int ampoules : {1, 5, 40}) {
        const auto dip = dipOf(kBudget, ampoules);
        ASSERT_TRUE(dip);
        EXPECT_NEAR(dip->heat, ampoules * heatOfOne(kBudget, dip->end), 1e-6 * dip->heat);
        EXPECT_DOUBLE_EQ(dip->depth, 28 - dip->end);
    }
}

// What the header promises of reckoning the contents as pure ice.
TEST(HeatBudgetTest, pureIceTakesSomewhatMoreThanACryoprotectedMedium)
{
    const auto rows = cryoprotected().rows;
    const auto enthalpyAt = [&](double celsius) {
        return std::ranges::lower_bound(rows, celsius, {}, &ThawRow::celsius)->enthalpy;
    };
    const double medium = enthalpyAt(28) - enthalpyAt(kCryogenCelsius);
    const double pure = waterEnthalpy(28) - iceEnthalpy(kCryogenCelsius);
    EXPECT_GT(pure, 1.05 * medium);
    EXPECT_LT(pure, 1.10 * medium);
}

TEST(HeatBudgetTest, leavesABathAloneThatGetsNothing)
{
    EXPECT_EQ(dipOf(kBudget, 0)->depth, 0);
    EXPECT_EQ(dipOf(kBudget, 0)->recovery, 0);
}

// By hand: the heater's 700 W to spare give back what was taken.
TEST(HeatBudgetTest, recoversWithWhatTheHeaterHasToSpare)
{
    const auto dip = dipOf(kBudget, 5);
    EXPECT_NEAR(*dip->recovery, dip->heat / 700, 1e-9);
    HeatBudget weak = kBudget;
    weak.bath.heater = 100;
    EXPECT_EQ(dipOf(weak, 5)->recovery, std::nullopt);
}

TEST(HeatBudgetTest, saysWhenTheBathItselfWouldFreeze)
{
    HeatBudget cup = kBudget;
    cup.bath.water = 0.1;
    EXPECT_TRUE(dipOf(cup, 2));
    EXPECT_FALSE(dipOf(cup, 20));
}

TEST(HeatBudgetTest, theMostIsTheLastThatStaysInside)
{
    for (const double lowest : {27.9, 27.0, 25.0}) {
        const int most = mostAmpoules(kBudget, lowest);
        EXPECT_GE(dipOf(kBudget, most)->end, lowest - 1e-9) << lowest;
        EXPECT_LT(dipOf(kBudget, most + 1)->end, lowest) << lowest;
    }
    EXPECT_EQ(mostAmpoules(kBudget, 28.01), 0);
    EXPECT_EQ(mostAmpoules(kBudget, 28), 0);
}

// Inside is the guard-banded interval of the verdict: 28 ± 1 °C with U = 0.2 begins at 27.2 °C.
TEST(HeatBudgetTest, insideHasTheGuardBandOfTheVerdict)
{
    EXPECT_DOUBLE_EQ(lowestInside({28, 1, 1}, 0.2), 27.2);
    EXPECT_DOUBLE_EQ(lowestInside({28, 1, 0}, 0.2), 27);
}

TEST(HeatCourseTest, dipsLessThanAClosedBathAndComesBack)
{
    const auto dip = dipOf(kBudget, 20);
    const auto course = courseOf(kBudget, *dip, 30, 1, 300);
    ASSERT_EQ(course.size(), 301U);
    double lowest = 28;
    for (const CoursePoint& point : course) {
        EXPECT_LE(point.celsius, 28);
        lowest = std::min(lowest, point.celsius);
    }
    EXPECT_GT(lowest, dip->end);
    EXPECT_LT(lowest, 28);
    EXPECT_EQ(course.front().celsius, 28);
    EXPECT_EQ(course.back().celsius, 28);
    EXPECT_EQ(course.back().seconds, 300);
}

// Without a heater the course ends where the closed bath does.
TEST(HeatCourseTest, endsAtTheClosedBathsTemperatureWithoutAHeater)
{
    HeatBudget cold = kBudget;
    cold.bath.heater = 0;
    const auto dip = dipOf(cold, 5);
    EXPECT_NEAR(courseOf(cold, *dip, 30, 10, 600).back().celsius, dip->end, 1e-3);
}

std::vector<LoggedDip> dipsOf(double mass, std::initializer_list<int> ampoules)
{
    HeatBudget budget = kBudget;
    budget.bath.water = mass;
    std::vector<LoggedDip> dips;
    for (const int each : ampoules)
        dips.push_back({each, 28, dipOf(budget, each)->end});
    return dips;
}

TEST(MassFitTest, findsTheMassThatMadeTheDips)
{
    const auto fit = fittedMass(kBudget, dipsOf(6.5, {1, 3, 5}));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->mass, 6.5, 0.001);
    EXPECT_NEAR(fit->rms, 0, 1e-4);
    EXPECT_EQ(fit->predicted.size(), 3U);
}

// The same 5 ampoules read 0.02 °C too deep and too shallow: the mean dip gives the mass, and the
// interval has it inside.
TEST(MassFitTest, saysHowGoodItIs)
{
    auto dips = dipsOf(6.5, {5, 5});
    dips[0].end += 0.02;
    dips[1].end -= 0.02;
    const auto fit = fittedMass(kBudget, dips);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->mass, 6.5, 0.002);
    EXPECT_NEAR(fit->rms, 0.02, 1e-4);
    ASSERT_TRUE(fit->interval);
    EXPECT_LT(fit->interval->low, 6.5);
    EXPECT_GT(fit->interval->high, 6.5);
    EXPECT_FALSE(fittedMass(kBudget, dipsOf(6.5, {5}))->interval);
}

TEST(MassFitTest, refusesWhatShowsNoDip)
{
    EXPECT_EQ(fittedMass(kBudget, {}).error(), FitFault::NoData);
    EXPECT_EQ(fittedMass(kBudget, {{0, 28, 27.9}}).error(), FitFault::NoData);
    EXPECT_EQ(fittedMass(kBudget, {{3, 28, 28.1}}).error(), FitFault::NoDip);
}

constexpr const char* kHeatCase =
    R"({"ampoules": 5, "ampoule": {"fill_g": 2, "glass_g": 3}, "bath": {"water_kg": 4, "heater_w": 800},
        "start_c": 28, "target_c": 28, "tolerance_c": 1, "expanded_u_c": 0.2})";

TEST(HeatCaseTest, readsItsDefaults)
{
    const auto heat = heatCaseFrom(kHeatCase);
    ASSERT_TRUE(heat);
    EXPECT_DOUBLE_EQ(heat->budget.ampoule.glass, 0.003);
    EXPECT_DOUBLE_EQ(heat->budget.cryogen, kCryogenCelsius);
    EXPECT_DOUBLE_EQ(heat->budget.glassHeat, kGlassHeat);
    const HeatAnswer answer = answered(*heat);
    EXPECT_TRUE(answer.staysInside);
    EXPECT_GT(answer.most, 5);
    EXPECT_NE(toJson(answer).find("\"stays_inside\":true"), std::string::npos);
}

TEST(HeatCaseTest, aBathThatIsAlreadyOutsideStaysNotInside)
{
    std::string text = kHeatCase;
    text.replace(text.find("\"start_c\": 28"), 13, "\"start_c\": 27.1");
    text.replace(text.find("\"ampoules\": 5"), 13, "\"ampoules\": 0");
    EXPECT_FALSE(answered(*heatCaseFrom(text)).staysInside);
}

TEST(HeatCaseTest, namesTheKeyThatIsWrong)
{
    const auto without = heatCaseFrom(R"({"ampoules": 5, "ampoule": {"fill_g": 2, "glass_g": 3},
        "bath": {"heater_w": 800}, "start_c": 28, "target_c": 28, "tolerance_c": 1})");
    EXPECT_EQ(without.error().key, "bath.water_kg");
    const auto warmer = heatCaseFrom(R"({"ampoules": 5, "ampoule": {"fill_g": 2, "glass_g": 3},
        "bath": {"heater_w": 800}, "start_c": 28, "target_c": 28, "tolerance_c": 1,
        "dips": [{"ampoules": 3, "start_c": 28, "end_c": 28.2}]})");
    EXPECT_EQ(warmer.error().key, "dips");
    EXPECT_EQ(warmer.error().expected, "dips in which the bath cools");
}

}  // namespace
}  // namespace bathside
