// The card's live cells: off and empty unless the site says otherwise, each slip by its key.

#include "core/card/read_live_cells.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/card/read.h"
#include "tests/support/cards.h"

namespace bathside {
namespace {

using nlohmann::json;

json fullSection()
{
    return json::parse(R"({"shown": true, "minimum_pfu": 2000, "minimum_source": "a label",
        "titre_off_percent": 20,
        "in_bath": {"half_life_low_ms": 3600000, "half_life_high_ms": 7200000, "source": "paper 1"},
        "in_bag": {"half_life_low_ms": 7200000, "half_life_high_ms": 7200000,
                   "source": "paper 2"}})");
}

Result<Card, CardFault> cardOf(const json& section)
{
    json document = json::parse(test::defaultCard()->document());
    document["live_cells"] = section;
    return cardFrom(document.dump());
}

TEST(LiveCellsFromTest, areOffAndEmptyByDefault)
{
    EXPECT_EQ(test::defaultCard()->content().liveCells, LiveCellRules());
    const auto card = cardOf({{"shown", false}});
    ASSERT_TRUE(card) << card.error().key;
    EXPECT_EQ(card->content().liveCells, LiveCellRules());
}

// Reckoned from the file with Python: hashlib over json.dumps with sorted keys and no spaces.
TEST(LiveCellsFromTest, leaveTheDefaultCardsHashAsItIs)
{
    EXPECT_EQ(test::defaultCard()->hash().text,
              "3b2e338e9ff374f8f7be87625c99b643136bfcce8c93840aa693114768c92613");
}

TEST(LiveCellsFromTest, takeAllThatIsGiven)
{
    const auto card = cardOf(fullSection());
    ASSERT_TRUE(card) << card.error().key;
    const LiveCellRules& rules = card->content().liveCells;
    EXPECT_TRUE(rules.isShown);
    EXPECT_EQ(rules.minimum, 2'000);
    EXPECT_EQ(rules.minimumSource, "a label");
    EXPECT_EQ(rules.titreOffPercent, 20);
    EXPECT_EQ(rules.inBath, (CellLoss{Millis(3'600'000), Millis(7'200'000), "paper 1"}));
    EXPECT_EQ(rules.inBag, (CellLoss{Millis(7'200'000), Millis(7'200'000), "paper 2"}));
}

TEST(LiveCellsFromTest, eachPartButTheSwitchMayBeLeftOut)
{
    for (const char* key : {"minimum_pfu", "titre_off_percent", "in_bath", "in_bag"}) {
        json section = fullSection();
        section.erase(key);
        EXPECT_TRUE(cardOf(section)) << key;
    }
}

struct Slip {
    const char* name;
    const char* patch;  // RFC 7386
    const char* key;
    const char* found;
    const char* expected;
};

class LiveCellsSlip : public testing::TestWithParam<Slip> {};

TEST_P(LiveCellsSlip, isNamedByItsKeyWithWhatStandsThereAndWhatShould)
{
    json section = fullSection();
    section.merge_patch(json::parse(GetParam().patch));
    const auto card = cardOf(section);
    ASSERT_FALSE(card);
    EXPECT_EQ(card.error().key, GetParam().key);
    EXPECT_EQ(card.error().found, GetParam().found);
    EXPECT_EQ(card.error().expected, GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Card, LiveCellsSlip,
    testing::Values(
        Slip{"NoSwitch", R"({"shown": null})", "live_cells.shown", "nothing", "true or false"},
        Slip{"MinimumOfNothing", R"({"minimum_pfu": 0})", "live_cells.minimum_pfu", "0",
             "a whole number of PFU a dose from 1 to 1000000"},
        Slip{"MinimumWithoutSource", R"({"minimum_source": null})", "live_cells.minimum_source",
             "nothing", "where minimum_pfu comes from"},
        Slip{"TitreOffByAll", R"({"titre_off_percent": 100})", "live_cells.titre_off_percent",
             "100", "a whole number of % from 0 to 99"},
        Slip{"LossWithoutSource", R"({"in_bag": {"source": null}})", "live_cells.in_bag.source",
             "nothing", "text of 1 to 200 characters in one line"},
        Slip{"LossWithAnEmptySource", R"({"in_bath": {"source": ""}})", "live_cells.in_bath.source",
             "\"\"", "text of 1 to 200 characters in one line"},
        Slip{"LossUpsideDown", R"({"in_bath": {"half_life_low_ms": 7200001}})",
             "live_cells.in_bath.half_life_low_ms", "7200001", "at most half_life_high_ms"},
        Slip{"LossAtOnce", R"({"in_bag": {"half_life_low_ms": 0}})",
             "live_cells.in_bag.half_life_low_ms", "0",
             "a whole number of ms from 60000 to 3600000000"},
        Slip{"LossWithoutARate", R"({"in_bag": {"half_life_high_ms": null}})",
             "live_cells.in_bag.half_life_high_ms", "nothing",
             "a whole number of ms from 60000 to 3600000000"},
        Slip{"UnknownKey", R"({"in_air": {}})", "live_cells.in_air", "an unknown key",
             "none but in_bag, in_bath, minimum_pfu, minimum_source, shown, titre_off_percent"},
        Slip{"UnknownKeyOfALoss", R"({"in_bag": {"rate": 1}})", "live_cells.in_bag.rate",
             "an unknown key", "none but half_life_high_ms, half_life_low_ms, source"}),
    [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace bathside
