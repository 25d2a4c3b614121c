#include "core/trail/json_lines.h"

#include <string>

#include <gtest/gtest.h>

#include "core/trail/canonical.h"
#include "tests/support/replaced.h"
#include "tests/support/sample_log.h"

namespace bathside {
namespace {

JsonLine sampleLine()
{
    Event event;
    event.seq = 1;
    event.at.wall = WallTime(Millis(1772691000123));
    event.at.bootId = {0x3f, 0x2b, 0x90, 0x1c, 0x7d, 0x11, 0x4e, 0x5a,
                       0x9c, 0x40, 1,    2,    3,    4,    5,    6};
    event.person = Person{{"AB"}, Proof::Claimed};
    event.tap = {"t-1"};
    event.fact = BagMixed{{"B1"}};
    Entry entry = entryOf(event, {"bench 1"});
    chain(entry, sha256("before"));
    return {entry, sha256("before")};
}

TEST(JsonLineTest, isTheCanonicalTextWithTheHashInItsPlace)
{
    for (const Entry& entry : test::sampleLog(200)) {
        const std::string line = toLine({entry, std::nullopt});
        EXPECT_EQ(
            test::replaced(line, "\"hash\":\"" + toHex(entry.hash) + "\",\"kind\"", "\"kind\""),
            canonicalText(entry));
        EXPECT_EQ(canonicalised(line), line);
        EXPECT_EQ(line.find('\n'), std::string::npos);
    }
}

TEST(JsonLineTest, readsBack)
{
    for (const Entry& entry : test::sampleLog(500)) {
        const JsonLine alone{entry, std::nullopt};
        const JsonLine afterGap{entry, sha256("before")};
        ASSERT_EQ(lineFrom(toLine(alone)), alone);
        ASSERT_EQ(lineFrom(toLine(afterGap)), afterGap);
    }
}

TEST(JsonLineTest, anotherFormOfTheSameIsNotCanonical)
{
    const std::string line = toLine(sampleLine());
    for (const std::string& other : {line + " ", " " + line, test::replaced(line, ":", ": "),
                                     test::replaced(line, "\"station\"", "\"statio\\u006e\"")}) {
        const auto read = lineFrom(other);
        ASSERT_FALSE(read.has_value());
        EXPECT_EQ(read.error(), (LineFault{LineFault::Kind::NotCanonical, 1, ""})) << other;
    }
}

TEST(JsonLineTest, aTimeThatIsNoneIsABadTime)
{
    const std::string line = toLine(sampleLine());
    for (const char* time : {"2026-13-05T06:10:00.000Z", "2026-03-05T06:10:00Z", "", "today"}) {
        const auto read = lineFrom(line.substr(0, 7) + time + line.substr(31));
        ASSERT_FALSE(read.has_value());
        EXPECT_EQ(read.error().kind, LineFault::Kind::BadTime) << time;
    }
}

TEST(JsonLineTest, whatIsNoJsonIsNoEntry)
{
    const std::string line = toLine(sampleLine());
    for (const std::string& text : {std::string(), std::string("x"), line.substr(1), line + line,
                                    line.substr(0, line.size() - 1), line + "\r"}) {
        const auto read = lineFrom(text);
        ASSERT_FALSE(read.has_value());
        EXPECT_NE(read.error().kind, LineFault::Kind::NotAnEntry) << text;
    }
}

struct Changed {
    const char* name;
    const char* what;
    const char* by;
    const char* key;
};

void PrintTo(const Changed& row, std::ostream* out) { *out << row.name; }

class LineIsNoEntry : public testing::TestWithParam<Changed> {};

TEST_P(LineIsNoEntry, byTheNameOfTheMember)
{
    const auto read =
        lineFrom(test::replaced(toLine(sampleLine()), GetParam().what, GetParam().by));
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error().kind, LineFault::Kind::NotAnEntry);
    EXPECT_EQ(read.error().key, GetParam().key);
}

INSTANTIATE_TEST_SUITE_P(
    JsonLine, LineIsNoEntry,
    testing::Values(
        Changed{"NoAt", "{\"at\":", "{\"as\":", "at"},
        Changed{"BootIdShort", "-010203040506", "-01020304050", "boot_id"},
        Changed{"BootAsText", "\"boot_us\":", "\"boot_us\":\"\",\"boot_x\":", "boot_us"},
        Changed{"ReceiptFalse", ",\"hash\"", ",\"by_receipt\":false,\"hash\"", "hash"},
        Changed{"EmptyCard", ",\"hash\"", ",\"card\":\"\",\"hash\"", "card"},
        Changed{"HashUpperCase", "\"hash\":\"", "\"hash\":\"A", "hash"},
        Changed{"KindEmpty", ",\"kind\":\"", ",\"kind\":\"\",\"kine\":\"", "kind"},
        Changed{"PayloadList", "\"payload\":{", "\"payload\":[],\"payloae\":{", "payload"},
        Changed{"PayloadDecimal", "\"payload\":{", "\"payload\":{\"\":1.5},\"payloae\":{",
                "payload"},
        Changed{"UnknownProof", "\"claimed\"", "\"sworn\"", "person.proof"},
        Changed{"PreviousShort", "\"previous\":\"", "\"previous\":\"0", "previous"},
        Changed{"SeqAsText", "\"seq\":1,", "\"seq\":\"1\",", "seq"},
        Changed{"StationMissing", "\"station\":", "\"stationed\":", "station"},
        Changed{"OneMemberMore", "\"t-1\"}", "\"t-1\",\"zz\":1}", ""}),
    [](const auto& row) { return std::string(row.param.name); });

}  // namespace
}  // namespace bathside
