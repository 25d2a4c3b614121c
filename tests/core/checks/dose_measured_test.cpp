// What is typed at the injector, judged through the document that the trail keeps.

#include "core/checks/dose_measured.h"

#include <gtest/gtest.h>

#include "core/checks/injector_case.h"

namespace bathside {
namespace {

InjectorCase read(const DoseMeasured& measured)
{
    const auto found = injectorCaseFrom(documentOf(measured));
    EXPECT_TRUE(found) << (found ? "" : found.error().key);
    return found.value_or(InjectorCase{});
}

WeighedShots shots(std::vector<std::int64_t> tenths, ShotLiquid liquid = Water{})
{
    return {.tenthsOfMilligram = std::move(tenths), .liquid = liquid};
}

constexpr MicroLitres kDose{200};

// ISO 8655-6, table of Z factors: 1.0033 µL/mg at 22 °C and 1013 hPa (from memory).
TEST(DoseMeasuredTest, waterIsWeighedByItsPrintedFactor)
{
    const auto check = read({kDose, shots({1993, 1993, 1994, 1993, 1994})});
    EXPECT_NEAR(check.factor.value(), 1.0033, 1e-4);
    EXPECT_NEAR(check.errors.mean, 0.19934 * 1.0033, 1e-5);
    EXPECT_EQ(check.errors.shots, 5U);
    EXPECT_EQ(judged(check).verdict, DoseVerdict::Good);
}

// By hand: 202 mg of 1.010 g/mL are 0.2 mL, but for the air's lift of 0.1 %.
TEST(DoseMeasuredTest, anotherLiquidByItsDensity)
{
    const auto check = read({kDose, shots({2020, 2020}, OtherLiquid{1'010})});
    EXPECT_NEAR(check.errors.mean, 0.2, 0.0003);
}

// By hand: 10 shots of 2.2 mL together are 0.22 mL each, 10 % too much.
TEST(DoseMeasuredTest, aCylinderKnowsTheMeanOnly)
{
    const auto check = read({kDose, CollectedShots{10, {2'200}, {100}}});
    EXPECT_NEAR(check.errors.systematicPercent, 10, 1e-9);
    EXPECT_FALSE(check.errors.random);
    EXPECT_EQ(judged(check).verdict, DoseVerdict::Failed);
}

TEST(DoseMeasuredTest, limitsAreThoseOfTheDocument)
{
    const auto judgedBy = [](const DoseLimits& limits) {
        return judged(read({kDose, CollectedShots{10, {2'200}, {100}}, limits})).verdict;
    };
    EXPECT_EQ(judgedBy({10, 5}), DoseVerdict::Good);
    EXPECT_EQ(judgedBy({9.9, 5}), DoseVerdict::Failed);
}

TEST(DoseMeasuredTest, oneShotIsNoCheck)
{
    EXPECT_FALSE(injectorCaseFrom(documentOf({kDose, shots({1993})})));
}

}  // namespace
}  // namespace bathside
