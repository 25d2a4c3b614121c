#include "core/stores/stores.h"

#include <gtest/gtest.h>

#include "tests/core/stores/support.h"

namespace bathside::test {
namespace {

class StoresTest : public testing::Test {
protected:
    StoresTest()
    {
        tell(stores, ShiftOpened{.zone = "UTC", .card = {}, .day = onDay("2026-03-05")});
        tell(stores, ampoules("K07", 10));
    }

    [[nodiscard]] std::int64_t at(const std::string& place, const Stock& of = kK07) const
    {
        const auto& places = stores.lot(of)->places;
        const auto found = places.find(place);
        return found == places.end() ? 0 : found->second.count;
    }
    [[nodiscard]] LotStanding standingOf(const Stock& of) const
    {
        return standing(stores, of, stores.day);
    }

    Stores stores;
};

TEST_F(StoresTest, aBalanceIsWhatCameLessWhatWent)
{
    tell(stores, ampoules("K07", 5, "2027-01-31", kOtherCane));
    tell(stores, StoreMoved{kK07, kCane, kOtherCane, 4});
    tell(stores, StoreDiscarded{kK07, kCane, 1, DiscardReason::Broken});
    tell(stores, AmpouleOut{{1, 1}, kThree, {"K07"}});

    EXPECT_EQ(stores.lot(kK07)->balance(), 13);  // 10 + 5 − 1 − 1
    EXPECT_EQ(at(kOtherCane), 9);
    EXPECT_EQ(at(kCane), 4);
    EXPECT_EQ(stores.lot(kK07)->flow.used, 1);
    EXPECT_EQ(stores.lot(kK07)->flow.discarded, 1);
}

TEST_F(StoresTest, aCountIsWhatThereIsAndItsDifferenceIsKept)
{
    tell(stores, StoreCounted{kK07, kCane, 8});

    EXPECT_EQ(stores.lot(kK07)->balance(), 8);
    EXPECT_EQ(stores.lot(kK07)->flow.miscounted, -2);
}

TEST_F(StoresTest, aSiteThatKeepsNoStoresIsNotControlled)
{
    const Stock other = ampoulesOf({"serotype 1"}, {"R19"});
    EXPECT_FALSE(keeps(stores, other));
    EXPECT_EQ(fitness(stores, other), LotStanding::Fit);

    tell(stores, AmpouleOut{{1, 1}, {"serotype 1"}, {"R19"}});
    EXPECT_TRUE(stores.strangers.empty());
}

TEST_F(StoresTest, anotherLotOfAComponentThatIsKeptIsUnknown)
{
    const Stock other = ampoulesOf(kThree, {"K99"});
    EXPECT_EQ(fitness(stores, other), LotStanding::Unknown);

    tell(stores, AmpouleOut{{1, 1}, kThree, {"K99"}});
    EXPECT_EQ(stores.strangers.at(other), 1);
    EXPECT_EQ(stores.lot(kK07)->balance(), 10);
}

TEST_F(StoresTest, aLotIsGoodThroughItsLastDay)
{
    EXPECT_EQ(standing(stores, kK07, onDay("2027-01-31")), LotStanding::Fit);
    EXPECT_EQ(standing(stores, kK07, onDay("2027-02-01")), LotStanding::Expired);
}

TEST_F(StoresTest, anExposedCaneSetsApartWhatStaysOnIt)
{
    tell(stores, ampoules("K07", 5, "2027-01-31", kOtherCane));
    tell(stores, CaneExposed{"Vessel 1, canister 2, cane 5", Millis(38'000)});
    EXPECT_EQ(standingOf(kK07), LotStanding::Fit);  // five are left on another cane

    tell(stores, AmpouleOut{{1, 1}, kThree, {"K07"}});
    EXPECT_EQ(at(kOtherCane), 4) << "free ones go before those in quarantine";

    tell(stores, CaneExposed{"vessel 1, canister 2", Millis(38'000)});
    EXPECT_EQ(standingOf(kK07), LotStanding::Quarantined);
}

TEST_F(StoresTest, movingMakesNoSuspectAmpouleGood)
{
    tell(stores, CaneExposed{kCane, Millis(38'000)});
    tell(stores, StoreMoved{kK07, kCane, kOtherCane, 10});

    EXPECT_EQ(standingOf(kK07), LotStanding::Quarantined);
}

TEST_F(StoresTest, aQuarantineEndsWithItsRelease)
{
    tell(stores, LotQuarantined{kK07, {}, "certificate missing"});
    EXPECT_EQ(standingOf(kK07), LotStanding::Quarantined);

    tell(stores, LotReleased{kK07, {"EF"}, "certificate seen"});
    EXPECT_EQ(standingOf(kK07), LotStanding::Fit);
}

TEST_F(StoresTest, anAllowanceHoldsForTheShiftOnly)
{
    tell(stores, LotQuarantined{kK07, {}, "certificate missing"});
    tell(stores, LotAllowed{kK07, {"EF"}, "telephoned"});
    EXPECT_EQ(fitness(stores, kK07), LotStanding::Fit);
    EXPECT_EQ(standingOf(kK07), LotStanding::Quarantined);

    tell(stores, ShiftOpened{.zone = "UTC", .card = {}, .day = onDay("2026-03-06")});
    EXPECT_TRUE(stores.allowed.empty());
}

TEST_F(StoresTest, theEarliestExpiryGoesFirst)
{
    EXPECT_EQ(lotToUse(stores, kThree), LotId{"K07"});
    tell(stores, ampoules("K09", 3, "2026-09-30"));
    tell(stores, ampoules("K05", 3, "2026-03-04"));  // expired
    EXPECT_EQ(lotToUse(stores, kThree), LotId{"K09"});

    tell(stores, LotChosen{kThree, {"K07"}, {}});
    EXPECT_EQ(lotToUse(stores, kThree), LotId{"K07"});
    EXPECT_EQ(lotToUse(stores, {"serotype 1"}), LotId{});
}

TEST_F(StoresTest, theChosenPlaceIsTakenFromFirst)
{
    tell(stores, ampoules("K07", 1, "2027-01-31", kOtherCane));
    tell(stores, LotChosen{kThree, {"K07"}, kOtherCane});
    tell(stores, AmpouleOut{{1, 1}, kThree, {"K07"}});
    tell(stores, AmpouleOut{{1, 2}, kThree, {"K07"}});

    EXPECT_EQ(at(kOtherCane), 0);
    EXPECT_EQ(at(kCane), 9);
}

TEST_F(StoresTest, moreThanThereIsGoesBelowZero)
{
    for (int no = 1; no <= 11; ++no)
        tell(stores, AmpouleOut{{1, no}, kThree, {"K07"}});

    EXPECT_EQ(stores.lot(kK07)->balance(), -1);
}

TEST_F(StoresTest, bagsAndNeedlesAreUsedByTheBench)
{
    tell(stores, diluent("D1", 4));
    tell(stores, diluent("D1", 4, {800'000}));
    const Stock needles{StockKind::Consumable, std::string(kNeedle), {"N1"}, {}};
    tell(stores, StoreReceived{.of = needles,
                               .place = {},
                               .count = 100,
                               .doses = {},
                               .expires = {},
                               .titre = {},
                               .delivery = {}});

    tell(stores, BagStarted{{"B1"}, {400'000}, {"D1"}, {}});
    tell(stores, NeedleChanged{{"A"}});
    tell(stores, NeedleChanged{{"B"}});

    EXPECT_EQ(stores.lot(diluentOf({400'000}, {"D1"}))->balance(), 3);
    EXPECT_EQ(stores.lot(diluentOf({800'000}, {"D1"}))->balance(), 4);
    EXPECT_EQ(stores.lot(needles)->balance(), 98);
}

TEST(PlaceTest, liesInWhateverBeginsLikeIt)
{
    EXPECT_TRUE(liesIn("vessel 1 / canister 2 / cane 5", "Vessel 1, canister 2, cane 5"));
    EXPECT_TRUE(liesIn("vessel 1 / canister 2 / cane 5", "vessel 1"));
    EXPECT_FALSE(liesIn("vessel 1 / canister 2 / cane 5", "vessel 1 / canister 3"));
    EXPECT_FALSE(liesIn("vessel 1", "vessel 1 / canister 2"));
    EXPECT_FALSE(liesIn("vessel 1", ""));
    EXPECT_FALSE(liesIn("vessel 11", "vessel 1"));
    EXPECT_EQ(placeText("vessel 1", "", "cane 5"), "vessel 1 / cane 5");
}

}  // namespace
}  // namespace bathside::test
