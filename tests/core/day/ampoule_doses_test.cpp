// Doses in an ampoule: the lot's own number goes before the card's.

#include "core/day/ampoule_doses.h"

#include <gtest/gtest.h>

namespace bathside {
namespace {

const ComponentId kComponent{"serotype 3"};

PlanRules rulesOf(std::int64_t doses)
{
    PlanRules rules;
    rules.dosesPerAmpoule = doses;
    return rules;
}

Stores storesWith(const LotId& lot, std::optional<std::int64_t> doses)
{
    Stores stores;
    const Stock of = ampoulesOf(kComponent, lot);
    StockLot known;
    known.of = of;
    known.doses = doses;
    stores.lots.emplace(of, known);
    return stores;
}

TEST(AmpouleDoses, areWhatTheLotSays)
{
    EXPECT_EQ(ampouleDoses(storesWith({"K07"}, 4000), rulesOf(1000), kComponent, {"K07"}), 4000);
}

TEST(AmpouleDoses, areTheCardsWhereTheLotSaysNone)
{
    EXPECT_EQ(ampouleDoses(storesWith({"K07"}, {}), rulesOf(1000), kComponent, {"K07"}), 1000);
}

TEST(AmpouleDoses, areTheCardsWhereTheStoresDoNotHaveThatLot)
{
    const Stores stores = storesWith({"K07"}, 4000);
    EXPECT_EQ(ampouleDoses(stores, rulesOf(1000), kComponent, {"K08"}), 1000);
    EXPECT_EQ(ampouleDoses(stores, rulesOf(1000), {"serotype 1"}, {"K07"}), 1000);
}

}  // namespace
}  // namespace bathside
