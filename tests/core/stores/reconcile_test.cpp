// Figures reckoned by hand from the formula of the spec: mean dose = (volume in − left − losses) /
// birds; a mass balance is common practice.

#include "core/stores/reconcile.h"

#include <gtest/gtest.h>

#include "tests/core/stores/support.h"
#include "tests/support/cards.h"

namespace bathside::test {
namespace {

class ReconcileTest : public testing::Test {
protected:
    ReconcileTest()
    {
        tell(stores, ampoules("K07", 10));
        for (int no = 1; no <= 4; ++no)
            tell(stores, AmpouleOut{{1, no}, kThree, {"K07"}});
        use.out = 4;
        use.bagged = 3;
        use.lost = 1;
        use.baggedOf[kK07] = 3;
        use.birds = 5800;
        use.lines = 2;
        use.in = {1'200'000};  // three bags of 400 mL
        use.left = {30'000};
    }

    Reconciliation reckoned() { return reconciled(stores, use, card->content()); }
    const Reckoning& row(const Reconciliation& sums, Reckoned what)
    {
        return *std::ranges::find(sums.rows, what, &Reckoning::what);
    }

    std::shared_ptr<const Card> card = defaultCard();
    Stores stores;
    DayUse use;
};

TEST_F(ReconcileTest, aDayThatAddsUp)
{
    tell(stores, StoreCounted{kK07, kCane, 6});  // 10 − 4
    const Reconciliation sums = reckoned();

    EXPECT_TRUE(sums.addsUp());
    EXPECT_EQ(row(sums, Reckoned::Pieces).expected, 6);
    EXPECT_EQ(row(sums, Reckoned::Pieces).counted, 6);
    EXPECT_EQ(row(sums, Reckoned::Doses).expected, 6000);        // 3 × 2,000
    EXPECT_EQ(row(sums, Reckoned::Doses).counted, 5950);         // 5,800 + 30 mL ÷ 0.2 mL
    EXPECT_EQ(row(sums, Reckoned::Doses).tolerance, 300);        // 5 %
    EXPECT_EQ(row(sums, Reckoned::Volume).expected, 1'160'000);  // 5,800 × 0.2 mL
    EXPECT_EQ(row(sums, Reckoned::Volume).counted, 1'170'000);   // 1,200 mL − 30 mL
    EXPECT_EQ(sums.meanDoseNl, 201'724);                         // 1,170 mL ÷ 5,800 = 0.201724 mL
}

TEST_F(ReconcileTest, whatDoesNotAddUpComesFirst)
{
    tell(stores, diluent("D1", 5));
    tell(stores, StoreCounted{kK07, kCane, 5});
    const Reconciliation sums = reckoned();

    ASSERT_FALSE(sums.rows.empty());
    EXPECT_EQ(sums.rows[0].of, kK07);
    EXPECT_EQ(sums.rows[0].outcome, Outcome::DoesNotAddUp);
    EXPECT_EQ(sums.rows[0].difference(), -1);
    EXPECT_EQ(sums.rows[1].outcome, Outcome::NotCounted);
    EXPECT_EQ(sums.rows[1].of.kind, StockKind::Diluent);
    EXPECT_FALSE(sums.addsUp());
}

TEST_F(ReconcileTest, laterUseIsNoDifference)
{
    tell(stores, StoreCounted{kK07, kCane, 6});
    tell(stores, AmpouleOut{{2, 1}, kThree, {"K07"}});
    const Reconciliation sums = reckoned();

    EXPECT_EQ(row(sums, Reckoned::Pieces).expected, 5);
    EXPECT_EQ(row(sums, Reckoned::Pieces).difference(), 0);
}

TEST_F(ReconcileTest, anAmpouleOfALotThatIsNotThereDoesNotAddUp)
{
    tell(stores, StoreCounted{kK07, kCane, 6});
    tell(stores, AmpouleOut{{2, 1}, kThree, {"K99"}});
    const Reconciliation sums = reckoned();

    EXPECT_EQ(sums.rows[0].of, ampoulesOf(kThree, {"K99"}));
    EXPECT_EQ(sums.rows[0].difference(), -1);
}

TEST_F(ReconcileTest, tolerancesAndLossesAreTheCards)
{
    card = cardWith(
        R"({"stores":{"ampoules_off":1,"volume_off_percent":0,"prime_loss_ul":5000,"source":"test"}})");
    tell(stores, StoreCounted{kK07, kCane, 5});
    const Reconciliation sums = reckoned();

    EXPECT_EQ(row(sums, Reckoned::Pieces).outcome, Outcome::AddsUp);
    EXPECT_EQ(row(sums, Reckoned::Volume).counted, 1'160'000);  // 5 mL lost on each of two lines
    EXPECT_EQ(row(sums, Reckoned::Volume).outcome, Outcome::AddsUp);
    EXPECT_EQ(sums.meanDoseNl, 200'000);
}

TEST_F(ReconcileTest, whileABagIsOpenItsDosesAreNotReckoned)
{
    use.bagsOpen = 1;
    const Reconciliation sums = reckoned();

    EXPECT_EQ(row(sums, Reckoned::Doses).outcome, Outcome::NotCounted);
    EXPECT_EQ(row(sums, Reckoned::Volume).outcome, Outcome::NotCounted);
    EXPECT_FALSE(sums.meanDoseNl);
}

TEST_F(ReconcileTest, anAmpouleThatIsStillOutIsMissing)
{
    use.lost = 0;
    EXPECT_EQ(reckoned().rows[0].what, Reckoned::Pulls);
    EXPECT_EQ(reckoned().rows[0].difference(), -1);
}

}  // namespace
}  // namespace bathside::test
