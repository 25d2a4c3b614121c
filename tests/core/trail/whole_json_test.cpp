#include "core/trail/whole_json.h"

#include <string>

#include <gtest/gtest.h>

#include "core/trail/canonical.h"
#include "core/trail/json_text.h"
#include "tests/support/random_facts.h"

namespace bathside {
namespace {

TEST(WholeJsonTest, takesWhatTheTrailWrites)
{
    for (const char* text : {"{}", "[]", "0", "-1", "9007199254740991", "-9007199254740991", "\"\"",
                             "true", "false", "null", R"({"a":1,"b":[1,2,{"c":null}]})",
                             R"(["\"\\\b\t\n\f\r\u0000\u001f"])", R"({"\n":1,"\r":2,"1":3})",
                             R"({"":0,"a":0,"aa":0,"b":0})", "{\"\U0001F602\":1,\"\uFB33\":2}"})
        EXPECT_TRUE(isWhole(text)) << text;
}

TEST(WholeJsonTest, refusesEverythingElse)
{
    for (const std::string text : {"",
                                   " ",
                                   "{} ",
                                   " {}",
                                   "{ }",
                                   "[1, 2]",
                                   "[1,]",
                                   "[,1]",
                                   "{\"a\"}",
                                   "{\"a\":}",
                                   "{a:1}",
                                   "{\"a\":1,}",
                                   "1.0",
                                   "1.5",
                                   "1e3",
                                   "1E3",
                                   "-0",
                                   "01",
                                   "+1",
                                   "-",
                                   "--1",
                                   "9007199254740992",
                                   "-9007199254740992",
                                   "99999999999999999999",
                                   "True",
                                   "nul",
                                   "\"",
                                   "\"a",
                                   R"("\/")",
                                   R"("\u0041")",
                                   R"("\u000A")",
                                   R"("\u000a")",
                                   R"("\u0008")",
                                   R"("\u001F")",
                                   R"("\u00e9")",
                                   R"("\x")",
                                   "\"\n\"",
                                   "\"\xFF\"",
                                   "\"\xC0\xAF\"",
                                   "\"\xED\xA0\xBD\"",
                                   "\"\xF4\x90\x80\x80\"",
                                   "\"\xE2\x82\"",
                                   R"({"b":1,"a":2})",
                                   R"({"a":1,"a":2})",
                                   "{\"\uFB33\":1,\"\U0001F602\":2}",
                                   R"({"1":3,"\n":1})",
                                   "[",
                                   "]",
                                   "[[]",
                                   "{}{}"})
        EXPECT_FALSE(isWhole(text)) << text;
}

TEST(WholeJsonTest, aPayloadIsAnObject)
{
    EXPECT_TRUE(isPayload("{}"));
    EXPECT_FALSE(isPayload("[]"));
    EXPECT_FALSE(isPayload("1"));
    EXPECT_FALSE(isPayload(""));
}

TEST(WholeJsonTest, isBoundedInDepth)
{
    const auto nested = [](std::size_t depth) {
        return std::string(depth, '[') + std::string(depth, ']');
    };
    EXPECT_TRUE(isWhole(nested(kDeepestJson)));
    EXPECT_FALSE(isWhole(nested(kDeepestJson + 1)));
    EXPECT_FALSE(isWhole(std::string(100000, '[')));
}

TEST(WholeJsonTest, measuresTheValueInFront)
{
    EXPECT_EQ(wholeLength(R"({"a":1},"seq":2)"), 7U);
    EXPECT_EQ(wholeLength("12]"), 2U);
    EXPECT_EQ(wholeLength("1.5"), 0U);
}

TEST(WholeJsonTest, stringsReadBack)
{
    test::RandomFacts random(4);
    for (int i = 0; i < 1000; ++i) {
        const std::string text = random.text();
        std::string quoted;
        appendJsonString(quoted, text);
        ASSERT_EQ(jsonStringLength(quoted + ",\"x\""), quoted.size());
        ASSERT_EQ(unquoted(quoted), text);
    }
}

// The two ways to know the canonical form, the quick look and the full rewriting, must agree.
TEST(WholeJsonTest, agreesWithTheFullCanonicalForm)
{
    static const std::vector<std::string> pieces{
        "{",   "}", "[",  "]",    "\"a\"", "\"b\"", ":",       ",",     "1",          "-7",
        "1.5", "0", "00", "true", "null",  " ",     "\"\\n\"", "\"é\"", "\"\\u00e9\""};
    test::RandomFacts random(5);
    int canonical = 0;
    for (int i = 0; i < 300'000; ++i) {
        std::string text;
        for (std::size_t left = 1 + random.below(9); left > 0; --left)
            text += pieces[random.below(pieces.size())];
        const auto full = canonicalised(text);
        const bool whole = text.find("1.5") == std::string::npos;
        const bool expected = full && *full == text && whole;
        ASSERT_EQ(isWhole(text), expected) << text;
        canonical += expected ? 1 : 0;
    }
    EXPECT_GT(canonical, 1000);
}

// RFC 3629, section 4: the first and the last sequence of each length, and what lies just beyond.
TEST(Utf8Test, takesWellFormedSequencesOnly)
{
    for (const std::string good :
         {"\x01", "\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
          "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
        EXPECT_EQ(utf8Length(good), good.size());
    for (const std::string bad :
         {"", "\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xC2", "\xC2\x41", "\xE0\x9F\xBF",
          "\xED\xA0\x80", "\xED\xBF\xBF", "\xE1\x80", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80",
          "\xF5\x80\x80\x80", "\xFF"})
        EXPECT_EQ(utf8Length(bad), 0U);
    EXPECT_TRUE(isUtf8("ñ€\U0001F423"));
    EXPECT_FALSE(isUtf8("ñ\xFF"));
}

}  // namespace
}  // namespace bathside
