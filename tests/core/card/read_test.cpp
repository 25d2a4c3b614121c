#include "core/card/read.h"

#include <fstream>
#include <functional>
#include <iterator>
#include <string>
#include <vector>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/card/read_limits.h"
#include "tests/support/cards.h"
#include "tests/support/file_bytes.h"

namespace bathside {
namespace {

using nlohmann::json;

const json& defaultDocument()
{
    static const json document = json::parse(test::bytesOf(BATHSIDE_DEFAULT_CARD));
    return document;
}

std::string keyAt(const json& document)
{
    const auto card = cardFrom(document.dump());
    return card ? "no fault" : card.error().key;
}

// Every value of the default card with its path, as a fault names it, and its JSON pointer.
struct Place {
    std::string path{};
    json::json_pointer pointer{};
};

void collect(const json& value, const Place& at, std::vector<Place>& places)
{
    if (!at.path.empty())
        places.push_back(at);
    if (value.is_structured())
        for (const auto& [key, part] : value.items()) {
            const std::string inner = value.is_array() ? "[" + key + "]" : "." + key;
            const auto path = at.path + inner;
            const auto pointer = value.is_array() ? at.pointer / std::stoul(key) : at.pointer / key;
            collect(part, {path.front() == '.' ? path.substr(1) : path, pointer}, places);
        }
}

std::vector<Place> places()
{
    std::vector<Place> all;
    collect(defaultDocument(), Place(), all);
    return all;
}

bool isMember(const Place& place) { return place.path.back() != ']'; }

// What a card may lack: a level's threshold, and one of the dose check's two measures.
bool isOptional(const Place& place)
{
    const std::string key = place.pointer.back();
    return key.starts_with("heads_up_") || key.starts_with("overrun_") ||
           place.path == "limits.dose check.at_ms" || place.path == "limits.dose check.at_birds";
}

TEST(CardFromTest, missesEachKeyByItsPath)
{
    for (const Place& place : places()) {
        if (!isMember(place) || isOptional(place))
            continue;
        json document = defaultDocument();
        document.at(place.pointer.parent_pointer()).erase(place.pointer.back());
        const auto card = cardFrom(document.dump());
        ASSERT_FALSE(card) << place.path;
        EXPECT_EQ(card.error().key, place.path);
        EXPECT_EQ(card.error().found, "nothing");
        EXPECT_FALSE(card.error().expected.empty());
    }
}

TEST(CardFromTest, takesACardWithoutAnOptionalKey)
{
    int optional = 0;
    for (const Place& place : places()) {
        if (!isMember(place) || !isOptional(place))
            continue;
        json document = defaultDocument();
        document.at(place.pointer.parent_pointer()).erase(place.pointer.back());
        EXPECT_EQ(keyAt(document), "no fault") << place.path;
        ++optional;
    }
    EXPECT_EQ(optional, 17);
}

TEST(CardFromTest, refusesEachWrongTypeByItsPath)
{
    for (const Place& place : places()) {
        const json wrong =
            defaultDocument().at(place.pointer).is_boolean() ? json("yes") : json(true);
        json document = defaultDocument();
        document.at(place.pointer) = wrong;
        EXPECT_EQ(keyAt(document), place.path);
    }
}

TEST(CardFromTest, refusesEachNumberOutOfRangeByItsPath)
{
    int numbers = 0;
    for (const Place& place : places()) {
        if (!defaultDocument().at(place.pointer).is_number())
            continue;
        for (const std::int64_t value : {-1'000'000'000'000, 1'000'000'000'000}) {
            json document = defaultDocument();
            document.at(place.pointer) = value;
            EXPECT_EQ(keyAt(document), place.path) << value;
        }
        ++numbers;
    }
    EXPECT_GT(numbers, 50);
}

TEST(CardFromTest, refusesEachTextThatCannotBeShown)
{
    const std::vector<std::string> unfit{"", std::string(300, 'x'), "a\nb"};
    std::size_t texts = 0;
    for (const Place& place : places()) {
        if (!defaultDocument().at(place.pointer).is_string())
            continue;
        const std::string& value = unfit[texts++ % unfit.size()];
        json document = defaultDocument();
        document.at(place.pointer) = value;
        EXPECT_EQ(keyAt(document), place.path) << value;
    }
    EXPECT_GT(texts, 100U);
}

TEST(CardFromTest, refusesAnUnknownKeyInEachObject)
{
    std::vector<Place> objects = places();
    objects.push_back(Place());
    for (const Place& place : objects) {
        json document = defaultDocument();
        if (!document.at(place.pointer).is_object())
            continue;
        document.at(place.pointer)["zz_new"] = 1;
        EXPECT_EQ(keyAt(document), place.path.empty() ? "zz_new" : place.path + ".zz_new");
    }
}

TEST(CardFromTest, refusesEachKeyASecondTime)
{
    for (const Place& place : places()) {
        if (!isMember(place))
            continue;
        json document = defaultDocument();
        document.at(place.pointer.parent_pointer())["zz_twin"] = document.at(place.pointer);
        std::string text = document.dump();
        text.replace(text.find("\"zz_twin\""), 9, json(place.pointer.back()).dump());
        const auto card = cardFrom(text);
        ASSERT_FALSE(card) << place.path;
        EXPECT_EQ(card.error().key, place.path);
        EXPECT_EQ(card.error().expected, "each key once");
    }
}

struct Rule {
    const char* name;
    const char* patch;  // RFC 7386
    const char* key;
};

class CardRule : public testing::TestWithParam<Rule> {};

TEST_P(CardRule, isNamedByItsKey)
{
    json document = defaultDocument();
    document.merge_patch(json::parse(GetParam().patch));
    const auto card = cardFrom(document.dump());
    ASSERT_FALSE(card);
    EXPECT_EQ(card.error().key, GetParam().key);
    EXPECT_FALSE(card.error().found.empty());
    EXPECT_FALSE(card.error().expected.empty());
}

INSTANTIATE_TEST_SUITE_P(
    Card, CardRule,
    testing::Values(
        Rule{"Schema", R"({"schema": 2})", "schema"},
        Rule{"HeadsUpAfterLimit", R"({"limits": {"thaw": {"heads_up_ms": 90001}}})",
             "limits.thaw.heads_up_ms"},
        Rule{"OverrunBeforeLimit", R"({"limits": {"thaw": {"overrun_ms": 89999}}})",
             "limits.thaw.overrun_ms"},
        Rule{"BirdsOutOfOrder", R"({"limits": {"needle": {"heads_up_birds": 1001}}})",
             "limits.needle.heads_up_birds"},
        Rule{"HeadsUpWithoutLimit",
             R"({"limits": {"dose check": {"at_ms": null, "heads_up_ms": 5,
                 "words": {"heads_up": {"en": "a", "es": "b"}}}}})",
             "limits.dose check.at_ms"},
        Rule{"DoseCheckByNothing",
             R"({"limits": {"dose check": {"at_ms": null, "at_birds": null}}})",
             "limits.dose check.at_birds"},
        Rule{"ZeroLimit", R"({"limits": {"exposure": {"at_ms": 0}}})", "limits.exposure.at_ms"},
        Rule{"BirdsOfATime", R"({"limits": {"swirl": {"at_birds": 5}}})", "limits.swirl.at_birds"},
        Rule{"TimeOfAVerdict", R"({"limits": {"bath at pull": {"at_ms": 5}}})",
             "limits.bath at pull.at_ms"},
        Rule{"StartOtherThanThePlan", R"({"limits": {"next pull": {"at_ms": 1}}})",
             "limits.next pull.at_ms"},
        Rule{"HeadsUpAfterThePlan", R"({"limits": {"next pull": {"heads_up_ms": 1}}})",
             "limits.next pull.heads_up_ms"},
        Rule{"LimitByReading", R"({"limits": {"reading": {"sort": "limit"}}})",
             "limits.reading.sort"},
        Rule{"LimitByNextPull", R"({"limits": {"next pull": {"sort": "limit"}}})",
             "limits.next pull.sort"},
        Rule{"LimitByBathBetweenPulls", R"({"limits": {"bath between pulls": {"sort": "limit"}}})",
             "limits.bath between pulls.sort"},
        Rule{"UnknownLimit", R"({"limits": {"colour": {}}})", "limits.colour"},
        Rule{"WordsForANewLevel", R"({"limits": {"dose check": {"overrun_birds": 6000}}})",
             "limits.dose check.words.overrun"},
        Rule{"LanguageTwice", R"({"languages": ["en", "en"]})", "languages"},
        Rule{"LanguageWithoutEnglish", R"({"languages": ["es"]})", "languages"},
        Rule{"LanguageWithoutWords", R"({"languages": ["en", "es", "fr"]})",
             "limits.exposure.words.heads_up.fr"},
        Rule{"WordsWithoutLanguage", R"({"languages": ["en"]})",
             "limits.exposure.words.heads_up.es"},
        Rule{"EmptyRecipe", R"({"recipe": []})", "recipe"},
        Rule{"ComponentTwice", R"({"recipe": [{"component": "a"}, {"component": "a"}]})",
             "recipe[1].component"},
        Rule{"ComponentOutOfOrder",
             R"({"recipe": [{"component": "a", "thaw": {"heads_up_ms": 9, "at_ms": 8}}]})",
             "recipe[0].thaw.heads_up_ms"},
        Rule{"ComponentWithoutLimit", R"({"recipe": [{"component": "a", "exposure": {}}]})",
             "recipe[0].exposure.at_ms"},
        Rule{"BathBelowItsBounds", R"({"bath": {"lowest_mc": 27001}})", "bath.lowest_mc"},
        Rule{"BathAboveItsBounds", R"({"bath": {"highest_mc": 28999}})", "bath.highest_mc"},
        Rule{"NoTolerance", R"({"bath": {"tolerance_mc": 0}})", "bath.tolerance_mc"},
        Rule{"DiluentUpsideDown", R"({"diluent": {"lowest_mc": 27001}})", "diluent.lowest_mc"},
        Rule{"VolumesOutOfOrder", R"({"make_up": {"bag_volumes_ul": [400000, 200000]}})",
             "make_up.bag_volumes_ul"},
        Rule{"VolumeTwice", R"({"make_up": {"bag_volumes_ul": [400000, 400000]}})",
             "make_up.bag_volumes_ul"},
        Rule{"MoreDrawnThanTheSyringeHolds", R"({"make_up": {"diluent_drawn_ul": 10001}})",
             "make_up.diluent_drawn_ul"},
        Rule{"ShortestThawAfterItsLimit", R"({"make_up": {"shortest_thaw_ms": 90001}})",
             "make_up.shortest_thaw_ms"},
        Rule{"CheckTwice",
             R"({"checks": [{"check": "a", "blocking": true, "words": {"en": "A", "es": "A"}},
                            {"check": "a", "blocking": true, "words": {"en": "A", "es": "A"}}]})",
             "checks[1].check"},
        Rule{"CheckNotASlug",
             R"({"checks": [{"check": "A b", "blocking": true, "words": {"en": "A", "es": "A"}}]})",
             "checks[0].check"}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(CardFromTest, saysWhatStandsThereAndWhatShould)
{
    json document = defaultDocument();
    document["limits"]["thaw"]["at_ms"] = "ninety";
    const auto card = cardFrom(document.dump());
    ASSERT_FALSE(card);
    EXPECT_EQ(card.error().found, "\"ninety\"");
    EXPECT_EQ(card.error().expected, "a whole number of ms from 1 to 86400000");
}

struct NoJson {
    const char* name;
    std::string text;
    const char* found;
};

class CardOfNoJson : public testing::TestWithParam<NoJson> {};

TEST_P(CardOfNoJson, isAFaultOfTheDocument)
{
    const auto card = cardFrom(GetParam().text);
    ASSERT_FALSE(card);
    EXPECT_EQ(card.error().key, "");
    EXPECT_EQ(card.error().found, GetParam().found);
}

INSTANTIATE_TEST_SUITE_P(
    Card, CardOfNoJson,
    testing::Values(NoJson{"Empty", "", "a fault at line 1, column 1"},
                    NoJson{"List", "[1, 2]", "a list of 2"}, NoJson{"Number", "7", "7"},
                    NoJson{"Comma", "{\n  \"schema\": 1,\n}", "a fault at line 3, column 1"},
                    NoJson{"Deep", std::string(65, '[') + std::string(65, ']'),
                           "more than 64 levels"},
                    NoJson{"Huge", std::string(1'048'577, ' '), "1048577 bytes"}),
    [](const auto& test) { return std::string(test.param.name); });

// Computed with Python: hashlib over json.dumps with sorted keys and no spaces, whole floats as
// whole numbers.
TEST(CardFromTest, hashesTheCanonicalText)
{
    const auto card = cardFrom(test::bytesOf(BATHSIDE_SITE_CARD));
    ASSERT_TRUE(card) << card.error().key;
    EXPECT_EQ(card->hash().text,
              "01968955c7ab9753eba1df996bfeb16292fc4066c3cdd3e7f0ef5e211cfb3381");
}

TEST(CardFromTest, hashesContentNotLayout)
{
    const auto card = test::defaultCard();
    const auto again = cardFrom(card->document());
    const auto spread = cardFrom(defaultDocument().dump(8));
    ASSERT_TRUE(again && spread);
    EXPECT_EQ(again->hash(), card->hash());
    EXPECT_EQ(spread->hash(), card->hash());
    EXPECT_EQ(again->document(), card->document());
    EXPECT_EQ(again->content(), card->content());
    EXPECT_NE(test::cardWith(R"({"version": 2})")->hash(), card->hash());
}

json withCauses(const char* causes)
{
    json document = defaultDocument();
    document["review"] = {{"causes", json::parse(causes)}, {"source", "the site"}};
    return document;
}

TEST(CardFromTest, takesTheCausesOfAReview)
{
    EXPECT_TRUE(test::defaultCard()->content().causes.empty());
    const auto card = cardFrom(
        withCauses(R"([{"cause": "door open", "words": {"en": "door open", "es": "puerta abierta"}},
                       {"cause": "fan", "words": {"en": "fan on", "es": "ventilador"}}])")
            .dump());
    ASSERT_TRUE(card);
    ASSERT_EQ(card->content().causes.size(), 2U);
    EXPECT_EQ(card->content().causes[0].id, "door open");
    EXPECT_EQ(card->content().causes[0].words.in("es"), "puerta abierta");
    EXPECT_EQ(card->content().causes[1].words.in("en"), "fan on");
}

TEST(CardFromTest, refusesCausesThatCannotBeTold)
{
    EXPECT_EQ(keyAt(withCauses("[]")), "review.causes");
    EXPECT_EQ(keyAt(withCauses(R"([{"cause": "fan", "words": {"en": "fan"}}])")),
              "review.causes[0].words.es");
    EXPECT_EQ(keyAt(withCauses(R"([{"cause": "fan", "words": {"en": "a", "es": "a"}},
                                   {"cause": "fan", "words": {"en": "b", "es": "b"}}])")),
              "review.causes[1].cause");
}

TEST(CardFromTest, takesTheSitesOwn)
{
    const auto card = cardFrom(test::bytesOf(BATHSIDE_SITE_CARD));
    ASSERT_TRUE(card) << card.error().key;
    EXPECT_EQ(card->content().name, "Zweiteilig \"Probe\" \\ 1");
    EXPECT_EQ(card->content().site, "Halle Süd 2");
    EXPECT_EQ(card->content().version, 12);
    EXPECT_EQ(card->content().languages, std::vector<std::string>{"en"});
    EXPECT_EQ(card->limit(LimitName::Exposure).time.at, Millis(12'000));
    EXPECT_EQ(card->limit(LimitName::Exposure).severity, Severity::Critical);
    EXPECT_EQ(card->limit(LimitName::Swirl).sort, Sort::Limit);
    EXPECT_EQ(card->limit(LimitName::BathAtPull).sort, Sort::Reminder);
    EXPECT_FALSE(card->limit(LimitName::DoseCheck).birds.at);
    EXPECT_EQ(card->content().bath.guardPercent, 0);
    EXPECT_TRUE(card->content().checks.empty());
}

}  // namespace
}  // namespace bathside
