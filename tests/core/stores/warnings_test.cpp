#include "core/stores/warnings.h"

#include <gtest/gtest.h>

#include "tests/core/stores/support.h"

namespace bathside::test {
namespace {

constexpr std::int64_t kNear = 30;

Demand doses(std::int64_t amount) { return {StockKind::Ampoule, kThree.text, {}, amount}; }

std::vector<StoreWarning> warned(const Stores& stores, const std::vector<Demand>& demands,
                                 const char* day = "2026-03-05")
{
    return warnings(stores, demands, onDay(day), kNear);
}

TEST(WarningsTest, saysHowManyDosesAreMissing)
{
    Stores stores;
    tell(stores, ampoules("K07", 3));  // 6,000 doses
    EXPECT_TRUE(warned(stores, {doses(6000)}).empty());

    const auto found = warned(stores, {doses(6001)});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0], (StoreWarning{StoreWarningKind::TooLittle, ampoulesOf(kThree, {}), 1}));
}

TEST(WarningsTest, whatMayNotBeUsedIsNotThere)
{
    Stores stores;
    tell(stores, ampoules("K07", 3));
    tell(stores, ampoules("K05", 3, "2026-03-04"));
    tell(stores, CaneExposed{kCane, Millis(20'000)});

    const auto found = warned(stores, {doses(1)});
    ASSERT_EQ(found.size(), 4U);
    EXPECT_EQ(found[0].kind, StoreWarningKind::TooLittle);
    EXPECT_EQ(found[1].kind, StoreWarningKind::Expired);
    EXPECT_EQ(found[1].of.lot, LotId{"K05"});
    EXPECT_EQ(found[2].kind, StoreWarningKind::Quarantined);

    tell(stores, LotAllowed{kK07, {"EF"}, "thermometer says cold"});
    EXPECT_NE(warned(stores, {doses(6000)})[0].kind, StoreWarningKind::TooLittle);
}

TEST(WarningsTest, aLotNearItsExpiryIsNamedTheSoonestFirst)
{
    Stores stores;
    tell(stores, ampoules("K09", 1, "2026-04-04"));  // 30 days
    tell(stores, ampoules("K08", 1, "2026-03-05"));  // today is its last
    tell(stores, ampoules("K07", 1, "2026-04-05"));  // 31 days

    const auto found = warned(stores, {});
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].of.lot, LotId{"K08"});
    EXPECT_EQ(found[0].amount, 0);
    EXPECT_EQ(found[1].amount, 30);
}

TEST(WarningsTest, countsBagsOfTheVolumeThatIsAskedFor)
{
    Stores stores;
    tell(stores, diluent("D1", 2));
    tell(stores, diluent("D1", 9, {800'000}));

    const auto found = warned(stores, {{StockKind::Diluent, {}, MicroLitres{400'000}, 5}});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].amount, 3);
}

}  // namespace
}  // namespace bathside::test
