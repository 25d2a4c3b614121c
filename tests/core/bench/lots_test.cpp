// Which lot is expected next. Earliest expiry goes first, and one bag takes one lot of a component
// (common practice; the job, 2.2).

#include "core/bench/lots.h"

#include <gtest/gtest.h>

#include "core/base/day.h"
#include "tests/support/shift.h"

namespace bathside::test {
namespace {

const ComponentId kSerotype3{"serotype 3"};
const ComponentId kSerotype1{"serotype 1"};

StoreReceived ampoules(const ComponentId& component, const char* lot, std::int64_t count,
                       const char* expires)
{
    return {.of = ampoulesOf(component, {lot}),
            .place = "cane 1",
            .count = count,
            .doses = 2000,
            .expires = dayFrom(expires)};
}

class LotsTest : public testing::Test {
protected:
    void SetUp() override
    {
        shift.open();
        shift.say(Receive{{ampoules(kSerotype3, "K50", 3, "2026-12-31"),
                           ampoules(kSerotype3, "K51", 9, "2027-06-30")}});
    }
    [[nodiscard]] std::string expected(const char* planned = "")
    {
        return expectedLot(shift.bench(), kSerotype3, {planned}).text;
    }
    /// `count` ampoules of that lot through a pull into a bag of that name, mixed.
    void use(const char* bag, int count, const char* lot)
    {
        shift.readyBag(bag);
        TakeOut taken;
        for (int i = 0; i < count; ++i)
            taken.ampoules.push_back({0, kSerotype3, {lot}});
        shift.say(taken);
        for (const Step step : {Step::Bath, Step::Diluent, Step::Bagged})
            shift.say(moved(step));
        shift.say(MixBag{BagId{bag}});
    }

    BenchShift shift;
};

TEST_F(LotsTest, theOneThatExpiresFirst) { EXPECT_EQ(expected(), "K50"); }

TEST_F(LotsTest, thePlansBeforeIt) { EXPECT_EQ(expected("K51"), "K51"); }

TEST_F(LotsTest, thePlansOnlyWhereItIsFit)
{
    shift.say(QuarantineLot{ampoulesOf(kSerotype3, {"K51"}), {}, "arrived damaged"});
    EXPECT_EQ(expected("K51"), "K50");
}

TEST_F(LotsTest, theChosenBeforeThePlans)
{
    shift.say(ChooseLot{kSerotype3, {"K50"}, {}});
    EXPECT_EQ(expected("K51"), "K50");
}

TEST_F(LotsTest, theOneUsedLast)
{
    use("B1", 1, "K51");
    EXPECT_EQ(expected(), "K51");
}

TEST_F(LotsTest, theNextWhereTheChosenIsSpent)
{
    shift.say(ChooseLot{kSerotype3, {"K50"}, {}});
    use("B1", 3, "K50");
    EXPECT_EQ(expected(), "K51");
    EXPECT_TRUE(mayGoNext(shift.bench(), kSerotype3, {"K51"}));
    EXPECT_FALSE(mayGoNext(shift.bench(), kSerotype3, {"K50"}));
}

// Two a bag and one left of K50: the bag is for K51, and the last one of K50 may still go.
TEST_F(LotsTest, theNextWhereTooFewAreLeft)
{
    use("B1", 2, "K50");
    EXPECT_EQ(ampoulesToTake(shift.bench(), kSerotype3), 2);
    EXPECT_EQ(expected(), "K51");
    EXPECT_TRUE(mayGoNext(shift.bench(), kSerotype3, {"K50"}));
}

TEST_F(LotsTest, theOneInTheBagWhateverIsLeftOfIt)
{
    use("B1", 1, "K51");
    shift.readyBag("B2");
    shift.say(
        TakeOut{{{0, kSerotype3, {"K50"}}, {0, kSerotype3, {"K50"}}, {0, kSerotype3, {"K50"}}}});
    EXPECT_EQ(shift.bench().stores.lot(ampoulesOf(kSerotype3, {"K50"}))->balance(), 0);
    EXPECT_EQ(expected(), "K50");
}

TEST_F(LotsTest, anAmpouleWithoutALotIsOfIt)
{
    shift.say(ChooseLot{kSerotype3, {"K50"}, {}});
    use("B1", 3, "K50");
    shift.readyBag("B2");
    shift.say(TakeOut{{{0, kSerotype3, {}}}});
    EXPECT_EQ(shift.bench().ampoule({2, 1})->lot.text, "K51");
}

TEST_F(LotsTest, noneWhereNothingIsKnown)
{
    EXPECT_EQ(expectedLot(shift.bench(), kSerotype1).text, "");
    EXPECT_EQ(ampoulesToTake(shift.bench(), kSerotype1), 1);
}

TEST_F(LotsTest, aLabelNamesWhatTheStoresHave)
{
    using std::chrono::year;
    const auto code = [](const char* text) { return *scannedCodeFrom(text, year(2026)); };
    const Stores& stores = shift.bench().stores;
    EXPECT_EQ(lotOn(code("(10)K50"), stores), LotId{"K50"});
    EXPECT_EQ(lotOn(code("K50"), stores), LotId{"K50"});
    EXPECT_EQ(lotOn(code("hello"), stores), std::nullopt);
    EXPECT_EQ(lotOn(code("(10)X1"), stores), LotId{"X1"});
    EXPECT_TRUE(stockOf(code("(10)X1"), stores).empty());
    EXPECT_EQ(stockOf(code("(10)K51"), stores), std::vector{ampoulesOf(kSerotype3, {"K51"})});
}

TEST_F(LotsTest, expiryTellsTwoOfOneNameApart)
{
    shift.say(Receive{{ampoules(kSerotype1, "K50", 2, "2027-01-31")}});
    using std::chrono::year;
    const auto named = [&](const char* text) {
        return stockOf(*scannedCodeFrom(text, year(2026)), shift.bench().stores);
    };
    EXPECT_EQ(named("(10)K50").size(), 2U);
    EXPECT_EQ(named("(17)270131(10)K50"), std::vector{ampoulesOf(kSerotype1, {"K50"})});
    EXPECT_EQ(named("(17)280131(10)K50").size(), 2U);
}

}  // namespace
}  // namespace bathside::test
