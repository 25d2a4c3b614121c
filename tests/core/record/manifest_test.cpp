#include "core/record/manifest.h"

#include <string>

#include <gtest/gtest.h>

#include "core/trail/canonical.h"

namespace bathside {
namespace {

Manifest sampleManifest()
{
    Manifest manifest;
    manifest.version = "0.1.0";
    manifest.station = "bench \"1\"";
    manifest.rehearsal = true;
    manifest.zone = "Europe/Madrid";
    manifest.firstDay = "2026-03-05";
    manifest.lastDay = "2026-03-06";
    manifest.from = WallTime(Millis(1772665200000));
    manifest.to = WallTime(Millis(1772838000000));
    manifest.head = {900, sha256("head")};
    manifest.last = {450, sha256("last")};
    manifest.count = 203;
    manifest.runs = {{200, 400}, {449, 450}};
    manifest.files = {{"events.jsonl", 123456, sha256("lines")}, {"bags.csv", 0, sha256("")}};
    return manifest;
}

TEST(ManifestTest, readsBack)
{
    EXPECT_EQ(manifestFrom(manifestText(sampleManifest())), sampleManifest());
    EXPECT_EQ(manifestFrom(manifestText(Manifest{})), Manifest{});
}

TEST(ManifestTest, namesItsKeyOnlyWhereItIsSigned)
{
    EXPECT_EQ(manifestText(sampleManifest()).find("\"key\""), std::string::npos);
    Manifest signedOne = sampleManifest();
    signedOne.key = std::string(64, 'a');
    EXPECT_EQ(manifestFrom(manifestText(signedOne)), signedOne);
    signedOne.key = "no key";
    EXPECT_EQ(manifestFrom(manifestText(signedOne)).error().key, "key");
}

TEST(ManifestTest, isOneCanonicalLine)
{
    const std::string text = manifestText(sampleManifest());
    EXPECT_EQ(canonicalised(text).value() + "\n", text);
}

TEST(ManifestTest, readsWhatAnEditorMadeOfIt)
{
    std::string spaced;
    for (const char c : manifestText(sampleManifest()))
        spaced.append(c == ',' ? ",\n  " : std::string(1, c));
    EXPECT_EQ(manifestFrom(spaced), sampleManifest());
}

struct Changed {
    const char* name;
    const char* what;
    const char* by;
    const char* key;
};

void PrintTo(const Changed& row, std::ostream* out) { *out << row.name; }

class ManifestRefuses : public testing::TestWithParam<Changed> {};

TEST_P(ManifestRefuses, andNamesTheKey)
{
    std::string text = manifestText(sampleManifest());
    const auto at = text.find(GetParam().what);
    ASSERT_NE(at, std::string::npos);
    text.replace(at, std::string(GetParam().what).size(), GetParam().by);
    const auto read = manifestFrom(text);
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error().key, GetParam().key) << text;
}

INSTANTIATE_TEST_SUITE_P(
    Manifest, ManifestRefuses,
    testing::Values(
        Changed{"NotJson", "{", "", ""},
        Changed{"KeyTwice", "\"count\":203", "\"count\":203,\"count\":203", ""},
        Changed{"Missing", "\"count\":203,", "", "count"},
        Changed{"UnknownKey", "\"count\"", "\"by\":1,\"count\"", "by"},
        Changed{"OtherFormat", "bathside-export", "other", "format"},
        Changed{"LaterVersion", "\"format_version\":1", "\"format_version\":2", "format_version"},
        Changed{"CountAsText", "\"count\":203", "\"count\":\"203\"", "count"},
        Changed{"RehearsalAsNumber", "\"rehearsal\":true", "\"rehearsal\":1", "rehearsal"},
        Changed{"HashTooShort", "\"head\":{\"hash\":\"", "\"head\":{\"hash\":\"0", "head.hash"},
        Changed{"HeadIsNoObject", "\"head\":{", "\"head\":7,\"heat\":{", "head"},
        Changed{"TimeIsNone", "2026-03-04T23:00:00.000Z", "yesterday", "from"},
        Changed{"RunBackwards", "\"first\":200,\"last\":400", "\"first\":400,\"last\":200",
                "runs.last"},
        Changed{"RunsOverlap", "\"first\":449", "\"first\":400", "runs.first"},
        Changed{"RunsIsNoList", "\"runs\":[", "\"runs\":1,\"rune\":[", "runs"},
        Changed{"FileInAnotherFolder", "bags.csv", "../bags.csv", "files.name"},
        Changed{"FileUnknownKey", "\"bytes\":0", "\"bytes\":0,\"b\":1", "files.b"}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(ManifestTest, aListIsNoManifest) { EXPECT_EQ(manifestFrom("[]").error().key, ""); }

}  // namespace
}  // namespace bathside
