// What the card holds checks to: absent unless the site says otherwise, each slip by its key, each
// difference by name.

#include "core/card/read_check_limits.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/card/compare.h"
#include "core/card/read.h"
#include "core/checks/check_limits.h"
#include "tests/support/cards.h"

namespace bathside {
namespace {

using nlohmann::json;

json fullLimits()
{
    json words = {{"en", "Stop the line."}, {"es", "Pare la línea."}};
    return {{"dose",
             {{"systematic_per_mille", 30},
              {"random_per_mille", 25},
              {"diluent_density_g_l", 1'012},
              {"words", words},
              {"source", "site rule 4"}}},
            {"birds",
             {{"target_per_mille", 975},
              {"confidence_per_mille", 900},
              {"words", words},
              {"source", "site rule 5"}}}};
}

Result<Card, CardFault> cardHolding(const json& limits)
{
    json document = json::parse(test::defaultCard()->document());
    document["check_limits"] = limits;
    return cardFrom(document.dump());
}

TEST(CheckLimitsTest, withoutThemWhatIsUsualHolds)
{
    EXPECT_EQ(test::defaultCard()->content().checkRules, CheckRules());
    for (const Card* card : {static_cast<const Card*>(nullptr), test::defaultCard().get()}) {
        EXPECT_EQ(doseLimitsOn(card), kUsualDoseLimits);
        EXPECT_EQ(coverageLimitsOn(card).target(), 0.95);
        EXPECT_EQ(coverageLimitsOn(card).confidence(), 0.95);
    }
}

TEST(CheckLimitsTest, takeAllThatIsGiven)
{
    const auto card = cardHolding(fullLimits());
    ASSERT_TRUE(card) << card.error().key;
    EXPECT_EQ(doseLimitsOn(&*card), (DoseLimits{3, 2.5}));
    EXPECT_EQ(doseRulesOn(&*card)->density, 1'012);
    EXPECT_EQ(doseRulesOn(&*card)->words.in("es"), "Pare la línea.");
    EXPECT_EQ(doseRulesOn(&*card)->source, "site rule 4");
    EXPECT_EQ(coverageLimitsOn(&*card).target(), 0.975);
    EXPECT_EQ(coverageLimitsOn(&*card).confidence(), 0.9);
    EXPECT_EQ(birdRulesOn(&*card)->source, "site rule 5");
}

TEST(CheckLimitsTest, eitherMayBeLeftOutAndTheDensityAndTheConfidence)
{
    json limits = fullLimits();
    limits["dose"].erase("diluent_density_g_l");
    limits["birds"].erase("confidence_per_mille");
    const auto card = cardHolding(limits);
    ASSERT_TRUE(card) << card.error().key;
    EXPECT_FALSE(doseRulesOn(&*card)->density);
    EXPECT_EQ(coverageLimitsOn(&*card).confidence(), 0.95);
    for (const char* key : {"dose", "birds"}) {
        json one = fullLimits();
        one.erase(key);
        EXPECT_TRUE(cardHolding(one)) << key;
    }
}

TEST(CheckLimitsTest, differencesNameThem)
{
    const auto before = cardHolding(fullLimits());
    json limits = fullLimits();
    limits["dose"]["systematic_per_mille"] = 40;
    const auto after = cardHolding(limits);
    EXPECT_THAT(
        differences(*before, *after),
        testing::ElementsAre(CardDifference{"check_limits.dose.systematic_per_mille", "30", "40"}));
}

struct CheckLimitsSlip {
    const char* name;
    const char* patch;  // RFC 7386
    const char* key;
    const char* expected;
};

class CheckLimitsSlips : public testing::TestWithParam<CheckLimitsSlip> {};

TEST_P(CheckLimitsSlips, isNamedByItsKey)
{
    json limits = fullLimits();
    limits.merge_patch(json::parse(GetParam().patch));
    const auto card = cardHolding(limits);
    ASSERT_FALSE(card);
    EXPECT_EQ(card.error().key, GetParam().key);
    EXPECT_EQ(card.error().expected, GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Card, CheckLimitsSlips,
    testing::Values(CheckLimitsSlip{"NoError", R"({"dose": {"systematic_per_mille": 0}})",
                                    "check_limits.dose.systematic_per_mille",
                                    "a whole number of per mille from 1 to 1000"},
                    CheckLimitsSlip{"NoSpread", R"({"dose": {"random_per_mille": null}})",
                                    "check_limits.dose.random_per_mille",
                                    "a whole number of per mille from 1 to 1000"},
                    CheckLimitsSlip{"LightAsAir", R"({"dose": {"diluent_density_g_l": 1}})",
                                    "check_limits.dose.diluent_density_g_l",
                                    "a whole number of g/L from 800 to 1500"},
                    CheckLimitsSlip{"AllBirds", R"({"birds": {"target_per_mille": 1000}})",
                                    "check_limits.birds.target_per_mille",
                                    "a whole number of per mille from 500 to 999"},
                    CheckLimitsSlip{"NoSource", R"({"birds": {"source": null}})",
                                    "check_limits.birds.source",
                                    "text of 1 to 200 characters in one line"},
                    CheckLimitsSlip{"NoWords", R"({"dose": {"words": {"es": null}}})",
                                    "check_limits.dose.words.es",
                                    "text of 1 to 80 characters in one line"}),
    [](const auto& slip) { return std::string(slip.param.name); });

}  // namespace
}  // namespace bathside
