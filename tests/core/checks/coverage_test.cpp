#include "core/checks/coverage.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

TEST(CoverageTest, narrowsWithMoreBirds)
{
    const Interval few = shareGood({19, 20}, 0.95);
    const Interval many = shareGood({190, 200}, 0.95);
    EXPECT_LT(few.low, many.low);
    EXPECT_GT(few.high, many.high);
}

TEST(CoverageTest, verdictIsOneSided)
{
    using enum CoverageVerdict;
    EXPECT_EQ(judged({59, 59}, 0.95, 0.95), Shown);
    EXPECT_EQ(judged({58, 58}, 0.95, 0.95), Undecided);
    EXPECT_EQ(judged({80, 100}, 0.95, 0.95), Missed);
    EXPECT_EQ(judged({0, 10}, 0.95, 0.95), Missed);
    EXPECT_EQ(judged({94, 100}, 0.95, 0.95), Undecided);
}

// Whatever number is named is enough, and one bird fewer is not.
TEST(CoverageTest, neededIsTheFewest)
{
    for (const int misses : {0, 1, 5, 20})
        for (const double target : {0.5, 0.9, 0.98}) {
            const int needed = birdsNeeded(target, 0.95, misses).value();
            EXPECT_EQ(judged({needed - misses, needed}, target, 0.95), CoverageVerdict::Shown);
            EXPECT_NE(judged({needed - misses - 1, needed - 1}, target, 0.95),
                      CoverageVerdict::Shown);
        }
    EXPECT_EQ(birdsNeeded(0.9999, 0.95, 100'000), std::nullopt);
}

}  // namespace
}  // namespace bathside
