#include "core/checks/live_cells.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

LiveCells budget()
{
    LiveCells cells;
    cells.titre = {3'000, 4'000};
    cells.dosesIn = 4'000;
    cells.dosesOut = 4'000;
    cells.bathHours = 0;
    cells.bagHours = 1;
    cells.bagLoss = LossRate{{1, 2}, "a paper"};
    return cells;
}

// By hand: after one hour half-lives of 1 and 2 h leave 1/2 and 1/√2.
TEST(LiveCellsTest, bandIsFromTheFastestLossToTheSlowest)
{
    const auto band = perDose(budget());
    ASSERT_TRUE(band);
    EXPECT_DOUBLE_EQ(band->low, 1'500);
    EXPECT_NEAR(band->high, 2'828.427, 0.001);
}

TEST(LiveCellsTest, dosesOpenedForFewerMakeTheDoseStronger)
{
    LiveCells cells = budget();
    cells.dosesOut = 2'000;
    EXPECT_DOUBLE_EQ(perDose(cells)->low, 3'000);
}

TEST(LiveCellsTest, bathAndBagMultiply)
{
    LiveCells cells = budget();
    cells.bathHours = 0.5;
    cells.bathLoss = LossRate{{0.5, 0.5}, "another"};
    EXPECT_DOUBLE_EQ(shareLeft(cells)->low, 0.25);
}

TEST(LiveCellsTest, showsNothingWithoutAPublishedRate)
{
    LiveCells cells = budget();
    cells.bagLoss.reset();
    EXPECT_EQ(perDose(cells), std::nullopt);
    cells.bagLoss = LossRate{{1, 2}, ""};
    EXPECT_EQ(perDose(cells), std::nullopt);
    cells = budget();
    cells.bathHours = 0.1;
    EXPECT_EQ(perDose(cells), std::nullopt);
    cells = budget();
    cells.bagHours = 0;
    cells.bagLoss.reset();
    EXPECT_EQ(shareLeft(cells)->low, 1);
}

TEST(LiveCellsTest, verdictLooksAtTheWholeBand)
{
    EXPECT_EQ(judged({1'000, 2'000}, 1'000), CellsVerdict::Above);
    EXPECT_EQ(judged({999, 1'000}, 1'000), CellsVerdict::Undecided);
    EXPECT_EQ(judged({500, 999}, 1'000), CellsVerdict::Below);
}

}  // namespace
}  // namespace bathside
