#include "core/card/strict_json.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/card/json_words.h"
#include "core/card/repeated_key.h"

namespace bathside {
namespace {

TEST(StrictJsonTest, keepsTheFirstFault)
{
    StrictJson json(R"({"a": 7, "b": "x"})");
    JsonObject root = json.root();
    EXPECT_EQ(root.whole("a", {1, 9, ""}), 7);
    root.whole("b", {1, 9, "ms"});
    root.text("c", 9);
    root.noOthers();
    ASSERT_TRUE(json.fault());
    EXPECT_EQ(json.fault()->key, "b");
    EXPECT_EQ(json.fault()->found, "\"x\"");
    EXPECT_EQ(json.fault()->expected, "a whole number of ms from 1 to 9");
}

TEST(StrictJsonTest, readsAllKindsAndHasNoFault)
{
    StrictJson json(
        R"({"o": {"n": 1.5}, "l": [{"t": "é"}, {"t": "b"}], "w": [1, 2.0], "s": ["x"], "f": true})");
    JsonObject root = json.root();
    EXPECT_DOUBLE_EQ(root.object("o").number("n", {0, 2, ""}), 1.5);
    auto list = root.objects("l", 0, 2);
    ASSERT_EQ(list.size(), 2U);
    EXPECT_EQ(list[0].text("t", 1), "é");
    EXPECT_EQ(root.wholes("w", 2, {1, 2, ""}), (std::vector<std::int64_t>{1, 2}));
    EXPECT_EQ(root.texts("s", 1, 1), std::vector<std::string>{"x"});
    EXPECT_TRUE(root.flag("f"));
    EXPECT_FALSE(root.objectIfAny("none"));
    EXPECT_FALSE(root.wholeIfAny("none", {0, 1, ""}));
    root.noOthers();
    EXPECT_FALSE(json.fault());
}

TEST(StrictJsonTest, readsNumbersAndNumbersThatMayBeMissing)
{
    StrictJson json(R"({"l": [1, 2.5, -3e-1], "n": 7, "e": []})");
    JsonObject root = json.root();
    EXPECT_EQ(root.numbers("l", 1, 3, {-1, 9, ""}), (std::vector<double>{1, 2.5, -0.3}));
    EXPECT_TRUE(root.numbers("e", 0, 3, {0, 1, ""}).empty());
    EXPECT_EQ(root.numberIfAny("n", {0, 9, ""}), 7.0);
    EXPECT_EQ(root.numberIfAny("none", {0, 9, ""}), std::nullopt);
    EXPECT_FALSE(json.fault());
    EXPECT_TRUE(root.numberIfAny("n", {0, 5, "s"}) == std::nullopt && json.fault());
}

TEST(StrictJsonTest, knowsWhatMayBeMissing)
{
    StrictJson json(R"({"t": "x", "l": [{}], "colour": 1})");
    JsonObject root = json.root();
    EXPECT_EQ(root.textIfAny("t", 1), "x");
    EXPECT_EQ(root.textIfAny("none", 1), std::nullopt);
    EXPECT_EQ(root.objectsIfAny("l", 1).size(), 1U);
    EXPECT_TRUE(root.objectsIfAny("nothing", 1).empty());
    EXPECT_FALSE(json.fault());
    root.noOthers();
    ASSERT_TRUE(json.fault());
    EXPECT_EQ(json.fault()->expected, "none but l, none, nothing, t");
}

TEST(StrictJsonTest, namesTheNumberInAListThatIsNone)
{
    StrictJson json(R"({"l": [1, "2"]})");
    json.root().numbers("l", 1, 3, {0, 9, "mg"});
    ASSERT_TRUE(json.fault());
    EXPECT_EQ(json.fault()->key, "l[1]");
    EXPECT_EQ(json.fault()->found, "\"2\"");
}

TEST(StrictJsonTest, shortensWhatItFound)
{
    StrictJson json("{\"a\": \"" + std::string(100, 'x') + "\"}");
    json.root().whole("a", {0, 1, ""});
    EXPECT_EQ(json.fault()->found, "\"" + std::string(59, 'x') + "…");
}

TEST(StrictJsonTest, goesOnHarmlesslyBelowWhatIsMissing)
{
    StrictJson json("{}");
    JsonObject root = json.root();
    JsonObject missing = root.object("o").object("p");
    EXPECT_EQ(missing.whole("q", {5, 9, ""}), 5);
    missing.refuse("q", "something");
    missing.noOthers();
    EXPECT_EQ(json.fault()->key, "o");
}

TEST(StrictJsonTest, refusesWholeNumbersBeyondTheirType)
{
    StrictJson json(R"({"a": 18446744073709551615})");
    json.root().whole("a", {0, 9'000'000'000'000'000'000, ""});
    ASSERT_TRUE(json.fault());
    EXPECT_EQ(json.fault()->key, "a");
}

TEST(JsonWordsTest, sayWhatAValueIs)
{
    using nlohmann::json;
    EXPECT_EQ(shown(json("é")), "\"é\"");
    EXPECT_EQ(shown(json::parse(R"({"a": 1})")), "an object");
    EXPECT_EQ(shown(json::parse("[1, 2]")), "a list of 2");
    EXPECT_EQ(rangeText(NumberRange{-0.5, 1000, "°C"}), "a number from -0.5 to 1000 °C");
    EXPECT_EQ(rangeText(WholeRange{1, 12, ""}), "a whole number from 1 to 12");
    EXPECT_EQ(characters("Baño °"), 6U);
    EXPECT_TRUE(isPlainText(json("baño"), 4));
    EXPECT_FALSE(isPlainText(json("baños"), 4));
    EXPECT_FALSE(isPlainText(json("a\x7f"), 4));
}

struct Repeat {
    const char* name;
    const char* text;
    const char* path;
};

class RepeatedKey : public testing::TestWithParam<Repeat> {};

TEST_P(RepeatedKey, isFoundByItsPath)
{
    EXPECT_EQ(pathOfRepeatedKey(GetParam().text), GetParam().path);
}

INSTANTIATE_TEST_SUITE_P(
    StrictJson, RepeatedKey,
    testing::Values(Repeat{"None", R"({"a": {"b": 1}, "c": {"b": 1}})", ""},
                    Repeat{"Top", R"({"a": 1, "b": 2, "a": 3})", "a"},
                    Repeat{"Inner", R"({"a": {"b": 1, "b": 2}})", "a.b"},
                    Repeat{"InList", R"({"a": [0, [1], {"b": 1, "c": {}, "b": 2}]})", "a[2].b"},
                    Repeat{"Escaped", R"({"a": 1, "\u0061": 3})", "a"},
                    Repeat{"First", R"({"a": 1, "a": 2, "b": 1, "b": 2})", "a"},
                    Repeat{"NoJson", R"({"a": )", ""}),
    [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace bathside
