// Which lots may be used: what `decide` refuses, what it lets pass within a pull and holds
// afterwards, and what a shift lead's word changes (spec: the job, 2.2 and 4).

#include <gtest/gtest.h>

#include "core/bench/day_use.h"
#include "tests/core/stores/support.h"
#include "tests/support/shift.h"

namespace bathside::test {
namespace {

class LotsTest : public testing::Test {
protected:
    LotsTest()
    {
        shift.at(1).say(
            Receive{{ampoules("K07", 10), ampoules("K05", 4, "2026-03-04", kOtherCane)}});
        shift.at(2).say(OpenShift{"UTC", {"AB"}, onDay("2026-03-05")});
        for (const Check& check : shift.bench().card->content().checks)
            shift.say(RecordCheck{check.id, true, {}});
        shift.readyBag("B1").at(60);
    }

    TakeOut taking(const std::string& lot) { return TakeOut{{{0, kThree, {lot}}}}; }
    void intoBag(double at)
    {
        shift.at(at).say(moved(Step::Bath));
        shift.at(at + 80).say(moved(Step::Diluent));
        shift.at(at + 85).say(MoveOn{Step::Bagged, {}, BagId{"B1"}});
    }
    const Bag& bag() { return *shift.bench().bag({"B1"}); }

    BenchShift shift;
};

TEST_F(LotsTest, aPullBeginsWithNoLotThatMayNotBeUsed)
{
    EXPECT_EQ(shift.refused(taking("K05")), RefusalCode::LotExpired);
    EXPECT_EQ(shift.at(61).refused(taking("K99")), RefusalCode::LotUnknown);
    shift.at(62).say(QuarantineLot{kK07, {}, "certificate missing"});
    EXPECT_EQ(shift.at(63).refused(taking("K07")), RefusalCode::LotInQuarantine);
    EXPECT_EQ(shift.at(64).refused(ChooseLot{kThree, {"K05"}, {}}), RefusalCode::LotExpired);
}

TEST_F(LotsTest, aShiftLeadsWordIsEnough)
{
    shift.say(AllowLot{ampoulesOf(kThree, {"K05"}), {"EF"}, "assay of yesterday is good"});
    shift.at(61).say(taking("K05"));
    intoBag(65);

    EXPECT_FALSE(bag().held());
}

TEST_F(LotsTest, theWordNeedsAPersonAndAReason)
{
    const Stock expired = ampoulesOf(kThree, {"K05"});
    EXPECT_EQ(shift.refused(AllowLot{expired, {}, "because"}), RefusalCode::NoPerson);
    EXPECT_EQ(shift.at(61).refused(AllowLot{expired, {"EF"}, {}}), RefusalCode::ReasonMissing);
    EXPECT_EQ(shift.at(62).refused(AllowLot{kK07, {"EF"}, "because"}), RefusalCode::NothingChanges);
}

TEST_F(LotsTest, withinAPullNothingIsRefusedAndTheBagIsHeld)
{
    shift.say(taking("K07"));
    shift.at(61).say(QuarantineLot{kK07, {}, "telephone call from the hatchery"});
    shift.at(62).say(taking("K07"));
    EXPECT_FALSE(bag().held());
    intoBag(65);

    ASSERT_TRUE(bag().held());
    EXPECT_EQ(shift.all<BagHeld>().front().why, HoldReason::LotNotFit);
}

TEST_F(LotsTest, anAmpouleWithoutALotIsOfTheOneThatGoesFirst)
{
    shift.at(61).say(Receive{{ampoules("K09", 2, "2026-09-30")}});
    shift.at(62).say(TakeOut{{{0, kThree, {}}}});

    EXPECT_EQ(shift.all<AmpouleOut>().back().lot, LotId{"K09"});
}

TEST_F(LotsTest, theChosenLotIsTaken)
{
    shift.at(61).say(Receive{{ampoules("K09", 2, "2026-09-30")}});
    shift.at(62).say(ChooseLot{kThree, {"K07"}, {}});
    shift.at(63).say(TakeOut{{{0, kThree, {}}}});

    EXPECT_EQ(shift.all<AmpouleOut>().back().lot, LotId{"K07"});
}

TEST_F(LotsTest, diluentIsHeldToTheSameRule)
{
    shift.say(Receive{{diluent("D1", 3)}});
    const auto start = [](const char* bag, const char* lot) {
        return StartBag{{bag}, {400'000}, {lot}, MilliCelsius{22'000}};
    };
    EXPECT_EQ(shift.at(61).refused(start("B2", "D9")), RefusalCode::LotUnknown);
    shift.at(62).say(start("B2", "D1"));
    EXPECT_EQ(shift.bench().stores.lot(diluentOf({400'000}, {"D1"}))->balance(), 2);

    shift.at(63).say(taking("K07"));
    shift.at(64).say(start("B3", "D9"));  // an ampoule is out: no refusal now
    EXPECT_TRUE(shift.bench().bag({"B3"})->held());
}

TEST_F(LotsTest, aCorrectedLotGoesBackIntoTheStores)
{
    shift.at(61).say(Receive{{ampoules("K09", 2, "2026-09-30")}});
    const Taken taken = shift.at(62).say(taking("K07"));
    shift.at(63).say(Correct{{taken.first}, "lot", "K09", "read again"});

    EXPECT_EQ(shift.bench().stores.lot(kK07)->balance(), 10);
    EXPECT_EQ(shift.bench().stores.lot(ampoulesOf(kThree, {"K09"}))->balance(), 1);
}

TEST_F(LotsTest, aDeliveryIsTakenBackWhole)
{
    shift.at(61).say(Receive{{ampoules("K09", 2, "2026-09-30"), diluent("D1", 3)}});
    shift.at(62).say(TakeBack{});

    EXPECT_EQ(shift.bench().stores.lots.size(), 2U);  // K07 and K05
}

TEST_F(LotsTest, theBalanceCarriedIsNoTapToTakeBack)
{
    BenchShift fresh;
    fresh.at(1).say(Receive{{ampoules("K07", 10)}});
    fresh.at(20).say(OpenShift{"UTC", {"AB"}});
    fresh.at(21);

    EXPECT_EQ(fresh.refused(TakeBack{}), RefusalCode::NothingToTakeBack);
    EXPECT_TRUE(fresh.bench().shiftIsOpen());
}

TEST_F(LotsTest, slipsInTheStoresAreRefused)
{
    EXPECT_EQ(shift.refused(MoveStock{kK07, kCane, "bin", 11}), RefusalCode::NotEnough);
    EXPECT_EQ(shift.refused(MoveStock{kK07, "bin", kCane, 1}), RefusalCode::NotInStores);
    EXPECT_EQ(shift.refused(MoveStock{kK07, kCane, kCane, 1}), RefusalCode::NothingChanges);
    EXPECT_EQ(shift.refused(DiscardStock{kK07, kCane, 0, DiscardReason::Broken}),
              RefusalCode::OutOfRange);
    EXPECT_EQ(shift.refused(CountStock{ampoulesOf(kThree, {"K99"}), kCane, 1}),
              RefusalCode::NotInStores);
    EXPECT_EQ(shift.refused(QuarantineLot{kK07, {}, {}}), RefusalCode::ReasonMissing);
    EXPECT_EQ(shift.refused(ReleaseLot{kK07, {"EF"}, "fine"}), RefusalCode::NothingChanges);
    EXPECT_EQ(shift.refused(Receive{{ampoules("K07", 1, "2027-02-28")}}), RefusalCode::LotDiffers);
    EXPECT_EQ(shift.refused(Receive{}), RefusalCode::BadValue);
    EXPECT_EQ(shift.refused(ChooseLot{kThree, {"K07"}, "bin"}), RefusalCode::NotInStores);
}

TEST_F(LotsTest, whatTheDayPlansIsAskedOfTheStores)
{
    LinePlanned plan{.line = {"A"},
                     .birds = 9300,
                     .birdsPerHour = 3000,
                     .start = std::chrono::hours(7),
                     .breaks = {},
                     .removed = false};
    shift.say(PlanLine{plan});
    plan.birds = 5000;
    shift.say(PlanLine{plan});
    shift.say(CountBirds{LineId{"A"}, 1000});

    ASSERT_EQ(shift.bench().planned.size(), 1U);
    const auto asked = demands(shift.bench());
    ASSERT_EQ(asked.size(), 2U);  // both components of the default card
    EXPECT_EQ(asked[0].amount, 4000);

    plan.removed = true;
    shift.say(PlanLine{plan});
    EXPECT_TRUE(shift.bench().planned.empty());
    plan = {.line = {"A"},
            .birds = 0,
            .birdsPerHour = 3000,
            .start = {},
            .breaks = {},
            .removed = false};
    EXPECT_EQ(shift.refused(PlanLine{plan}), RefusalCode::OutOfRange);
}

}  // namespace
}  // namespace bathside::test
