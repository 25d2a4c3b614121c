#include "core/base/quantiles.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

// Published: the usual printed tables of the distributions, to their last digit (from memory; the
// same digits from scipy 1.10.1).
TEST(QuantilesTest, agreeWithPrintedTables)
{
    EXPECT_NEAR(normalQuantile(0.975), 1.959964, 5e-7);
    EXPECT_NEAR(studentQuantile(0.975, 9), 2.262, 5e-4);
    EXPECT_NEAR(studentQuantile(0.975, 1), 12.706, 5e-4);
    EXPECT_NEAR(chiSquareQuantile(0.95, 10), 18.307, 5e-4);
    EXPECT_NEAR(betaQuantile(0.5, 1, 1), 0.5, 1e-15);
}

TEST(QuantilesTest, takeTheUpperTailOfATwoSidedInterval)
{
    EXPECT_DOUBLE_EQ(upperTail(0.95), 0.975);
}

}  // namespace
}  // namespace bathside
