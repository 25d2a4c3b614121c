#include "core/base/piecewise.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

const Piecewise kRoof({{0, 0}, {2, 4}, {6, 0}});

TEST(PiecewiseTest, isStraightBetweenItsPointsAndLevelBeyond)
{
    EXPECT_DOUBLE_EQ(kRoof.at(1), 2);
    EXPECT_DOUBLE_EQ(kRoof.at(2), 4);
    EXPECT_DOUBLE_EQ(kRoof.at(5), 1);
    EXPECT_DOUBLE_EQ(kRoof.at(-3), 0);
    EXPECT_DOUBLE_EQ(kRoof.at(9), 0);
}

// Triangles by hand.
TEST(PiecewiseTest, integratesExactlyAndWithSign)
{
    EXPECT_DOUBLE_EQ(kRoof.integral(0, 6), 12);
    EXPECT_DOUBLE_EQ(kRoof.integral(0, 1), 1);
    EXPECT_DOUBLE_EQ(kRoof.integral(1, 4), 3 + 6);
    EXPECT_DOUBLE_EQ(kRoof.integral(4, 1), -9);
    EXPECT_DOUBLE_EQ(Piecewise({{0, 2}, {1, 2}}).integral(-1, 3), 8);
    EXPECT_DOUBLE_EQ(Piecewise({{5, 2}}).integral(0, 3), 6);
}

}  // namespace
}  // namespace bathside
