#include "core/checks/injector.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

constexpr DoseLimits kLimits{5, 3};

JudgedDose judge(const std::vector<double>& volumes)
{
    return judged(errorsOf(volumes, 0.2, 0.95), 0.2, kLimits);
}

TEST(InjectorTest, failsForItsMeanOrForItsScatter)
{
    EXPECT_EQ(judge({0.199, 0.2, 0.201, 0.2}).verdict, DoseVerdict::Good);
    EXPECT_EQ(judge({0.219, 0.22, 0.221, 0.22}).verdict, DoseVerdict::Failed);
    EXPECT_EQ(judge({0.19, 0.21, 0.19, 0.21}).verdict, DoseVerdict::Failed);
    EXPECT_EQ(judge({0.179, 0.18, 0.181, 0.18}).verdict, DoseVerdict::Failed);
}

TEST(InjectorTest, atTheLimitIsGood)
{
    EXPECT_EQ(judge({0.21, 0.21, 0.21}).verdict, DoseVerdict::Good);
    EXPECT_EQ(judge({0.2101, 0.2101, 0.2101}).verdict, DoseVerdict::Failed);
}

// Two shots 1.5 % apart say little about the mean; ten do.
TEST(InjectorTest, saysWhetherTheMeanIsCertain)
{
    EXPECT_TRUE(judge({0.199, 0.2, 0.201, 0.2}).isCertain);
    EXPECT_FALSE(judge({0.2055, 0.2095}).isCertain);
    EXPECT_TRUE(judge({0.22, 0.2201, 0.2199, 0.22}).isCertain);
}

// By hand: 10 shots, 2.05 mL, graduated in 0.1 mL: 0.205 ± 0.005 mL, 2.5 % too much.
TEST(InjectorTest, cylinderIsTheQuickForm)
{
    const DoseErrors errors = errorsInCylinder(10, 2.05, 0.1, 0.2);
    EXPECT_DOUBLE_EQ(errors.mean, 0.205);
    EXPECT_NEAR(errors.systematicPercent, 2.5, 1e-9);
    EXPECT_EQ(errors.random, std::nullopt);
    EXPECT_NEAR(errors.interval->low, 0.2, 1e-12);
    EXPECT_NEAR(errors.interval->high, 0.21, 1e-12);
    EXPECT_EQ(judged(errors, 0.2, kLimits).verdict, DoseVerdict::Good);
    EXPECT_TRUE(judged(errors, 0.2, kLimits).isCertain);
    EXPECT_EQ(judged(errorsInCylinder(10, 2.2, 0.1, 0.2), 0.2, kLimits).verdict,
              DoseVerdict::Failed);
}

// By hand: in still air of no density a gram of 1,250 kg/m³ is 0.8 mL.
TEST(InjectorTest, weighsByDensity) { EXPECT_DOUBLE_EQ(weighingFactor(1'250, 0), 0.8); }

}  // namespace
}  // namespace bathside
