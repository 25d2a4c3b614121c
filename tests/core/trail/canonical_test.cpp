#include "core/trail/canonical.h"

#include <bit>
#include <string>

#include <gtest/gtest.h>

#include "core/trail/hash.h"
#include "core/trail/utf16_order.h"

namespace bathside {
namespace {

struct File {
    const char* name;
    const char* input;
    const char* digest;
};

void PrintTo(const File& row, std::ostream* out) { *out << row.name; }

class Canonicalised : public testing::TestWithParam<File> {};

TEST_P(Canonicalised, hasThePublishedBytes)
{
    const auto text = canonicalised(GetParam().input);
    ASSERT_TRUE(text.has_value());
    EXPECT_EQ(toHex(sha256(*text)), GetParam().digest) << *text;
}

TEST_P(Canonicalised, staysAsItIs)
{
    const auto text = canonicalised(GetParam().input);
    EXPECT_EQ(canonicalised(*text), text);
}

// Published: the test files of the authors of RFC 8785 (json-canonicalization, commit 19d51d7). The
// inputs are set down again from them; the digests are of their canonical outputs, computed with
// Python's hashlib.
INSTANTIATE_TEST_SUITE_P(
    Rfc8785, Canonicalised,
    testing::Values(
        File{"Arrays",
             "[\n  56,\n  {\n    \"d\": true,\n    \"10\": null,\n    \"1\": [ ]\n  }\n]\n",
             "099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42"},
        File{"Structures",
             R"({ "1": {"f": {"f": "hi","F": 5} ,"\n": 56.0}, "10": { }, "": "empty", "a": { },
                  "111": [ {"e": "yes","E": "no" } ], "A": { } })",
             "605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5"},
        File{"Values",
             R"({ "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                  "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
                  "literals": [null, true, false] })",
             "2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb"},
        File{"French",
             R"({ "peach": "This sorting order", "péché": "is wrong according to French",
                  "pêche": "but canonicalization MUST", "sin":   "ignore locale" })",
             "d99d0ebdcb0033cb858cfa830ae46bc0fb3309413b271f1da828c89901a27ed5"},
        File{"Unicode", R"({ "Unnormalized Unicode":"A\u030a" })",
             "0d99aad92a125196ff887876643fd3206786a84ddce2cee52ba4ad256d2381d3"},
        File{"Weird",
             R"({ "\u20ac": "Euro Sign", "\r": "Carriage Return", "\u000a": "Newline", "1": "One",
                  "\u0080": "Control\u007f", "\ud83d\ude02": "Smiley",
                  "\u00f6": "Latin Small Letter O With Diaeresis",
                  "\ufb33": "Hebrew Letter Dalet With Dagesh", "</script>": "Browser Challenge" })",
             "6af595a9aa80110b964b4de3f82a05fa6ae7423005019bacfa2620dddc4e94d1"}),
    [](const auto& row) { return std::string(row.param.name); });

struct Number {
    std::uint64_t bits;
    const char* text;
};

// Published: RFC 8785, appendix B, rows by the bits of the double.
TEST(EcmaNumberTest, isAsInTheAppendix)
{
    for (const Number& row :
         {Number{0x4340000000000001, "9007199254740994"},
          Number{0x4340000000000002, "9007199254740996"}, Number{0x444b1ae4d6e2ef50, "1e+21"},
          Number{0x3eb0c6f7a0b5ed8d, "0.000001"},
          Number{0x3eb0c6f7a0b5ed8c, "9.999999999999997e-7"}, Number{0x8000000000000000, "0"}})
        EXPECT_EQ(ecmaNumber(std::bit_cast<double>(row.bits)), row.text);
}

// Follow from ECMA-262, Number::toString: constructed examples, one for each of its branches.
TEST(EcmaNumberTest, takesEachBranch)
{
    EXPECT_EQ(ecmaNumber(123), "123");
    EXPECT_EQ(ecmaNumber(-1), "-1");
    EXPECT_EQ(ecmaNumber(100), "100");
    EXPECT_EQ(ecmaNumber(1e20), "100000000000000000000");
    EXPECT_EQ(ecmaNumber(-28.4), "-28.4");
    EXPECT_EQ(ecmaNumber(0.05), "0.05");
    EXPECT_EQ(ecmaNumber(1e-7), "1e-7");
    EXPECT_EQ(ecmaNumber(1.5e300), "1.5e+300");
    EXPECT_EQ(ecmaNumber(5e-324), "5e-324");
    EXPECT_EQ(ecmaNumber(1.7976931348623157e308), "1.7976931348623157e+308");
}

TEST(CanonicalTest, whatIsBeyondAWholeDoubleIsTheNearestOne)
{
    EXPECT_EQ(canonicalised("9007199254740993"), "9007199254740992");
    EXPECT_EQ(canonicalised("18446744073709551616"), "18446744073709552000");
    EXPECT_EQ(canonicalised("-0"), "0");
    EXPECT_EQ(canonicalised("-0.0"), "0");
}

// RFC 8785, section 3.2.3: by UTF-16 code units. U+FB33 is one unit, U+1F602 begins with D83D.
TEST(Utf16OrderTest, pairsComeBeforeTheLastOfTheBasicPlane)
{
    EXPECT_TRUE(utf16Less("\U0001F602", "\uFB33"));
    EXPECT_FALSE(utf16Less("\uFB33", "\U0001F602"));
    EXPECT_TRUE(utf16Less("\uD7FF", "\U0001F602"));
    EXPECT_TRUE(utf16Less("\U0001F602", "\uE000"));
    EXPECT_TRUE(utf16Less("a", "aa"));
    EXPECT_TRUE(utf16Less("", "a"));
    EXPECT_FALSE(utf16Less("a", "a"));
}

struct NoJson {
    const char* name;
    std::string text;
    JsonFault::Kind kind;
};

void PrintTo(const NoJson& row, std::ostream* out) { *out << row.name; }

class CanonicalRefuses : public testing::TestWithParam<NoJson> {};

TEST_P(CanonicalRefuses, andSaysWhy)
{
    const auto text = canonicalised(GetParam().text);
    ASSERT_FALSE(text.has_value()) << *text;
    EXPECT_EQ(text.error().kind, GetParam().kind);
}

using enum JsonFault::Kind;

INSTANTIATE_TEST_SUITE_P(
    Canonical, CanonicalRefuses,
    testing::Values(NoJson{"Nothing", "", NotJson}, NoJson{"TwoValues", "1 2", NotJson},
                    NoJson{"Open", "{\"a\":1", NotJson}, NoJson{"TrailingComma", "[1,]", NotJson},
                    NoJson{"SingleQuotes", "{'a':1}", NotJson},
                    NoJson{"LeadingZero", "01", NotJson}, NoJson{"PlusSign", "+1", NotJson},
                    NoJson{"NaN", "NaN", NotJson}, NoJson{"Infinity", "1e400", NotJson},
                    NoJson{"Comment", "/* */1", NotJson},
                    NoJson{"ByteOrderMark", "\xEF\xBB\xBF{}", NotJson},
                    NoJson{"LoneHighSurrogate", R"("\ud83d")", NotJson},
                    NoJson{"LoneLowSurrogate", R"("\ude02")", NotJson},
                    NoJson{"SurrogatesSwapped", R"("\ude02\ud83d")", NotJson},
                    NoJson{"SurrogateInUtf8", "\"\xED\xA0\xBD\"", NotJson},
                    NoJson{"Overlong", "\"\xC0\xAF\"", NotJson},
                    NoJson{"ControlCharacter", "\"\n\"", NotJson},
                    NoJson{"KeyTwice", R"({"a":1,"b":2,"a":1})", RepeatedKey},
                    NoJson{"KeyTwiceByEscape", R"({"a":1,"\u0061":1})", RepeatedKey},
                    NoJson{"KeyTwiceInside", R"([{"x":{"a":1,"a":2}}])", RepeatedKey},
                    NoJson{"TooDeep", std::string(65, '[') + std::string(65, ']'), TooDeep},
                    NoJson{"TooDeepByFar", std::string(100000, '['), TooDeep}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(CanonicalTest, aRepeatedKeyIsNamed)
{
    EXPECT_EQ(canonicalised(R"({"thaw":1,"thaw":2})").error().found, "thaw");
}

TEST(CanonicalTest, goesAsDeepAsItSays)
{
    const std::string deep = std::string(kDeepestJson, '[') + std::string(kDeepestJson, ']');
    EXPECT_EQ(canonicalised(deep), deep);
}

}  // namespace
}  // namespace bathside
