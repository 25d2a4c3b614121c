#include "core/record/verify_export.h"

#include <functional>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/record/export.h"
#include "core/trail/json_lines.h"
#include "tests/support/local_days.h"
#include "tests/support/memory_trail.h"
#include "tests/support/sample_log.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

constexpr Seq kCount = 1000;

struct Exported {
    Manifest manifest;
    std::string lines;
};

Exported exportedRuns(std::vector<SeqRange> runs)
{
    static const test::MemoryTrail trail(test::sampleLog(kCount));
    const auto day = 2026y / std::chrono::March / 5;
    const ExportOrder order{.zone = "UTC",
                            .firstDay = day,
                            .lastDay = day,
                            .version = "0.1.0",
                            .runs = std::move(runs),
                            .context = {},
                            .origin = {},
                            .lines = true,
                            .sheets = {}};
    test::MemorySink sink;
    const auto manifest = exportRecord(trail, order, test::TableDays(), sink);
    return {manifest.value(), sink.files.at("events.jsonl")};
}

ExportVerification verified(const std::string& lines,
                            std::optional<Manifest> manifest = std::nullopt,
                            std::size_t piece = 1000)
{
    ExportVerifier verifier(std::move(manifest));
    for (std::size_t at = 0; at < lines.size(); at += piece)
        verifier.add(std::string_view(lines).substr(at, piece));
    return verifier.finish();
}

TEST(VerifyExportTest, aSoundExportIsSoundInPiecesOfAnySize)
{
    const auto [manifest, lines] = exportedRuns({{1, kCount}});
    for (const std::size_t piece : {1UL, 7UL, 4096UL, 100'000'000UL}) {
        EXPECT_TRUE(verified(lines, std::nullopt, piece).isSound());
        EXPECT_TRUE(verified(lines, manifest, piece).isSound());
    }
    EXPECT_EQ(verified(lines).chain.head, manifest.last);
}

TEST(VerifyExportTest, aDayInMidTrailIsSoundByItself)
{
    const auto [manifest, lines] = exportedRuns({{300, 400}});
    EXPECT_TRUE(verified(lines).isSound());
    EXPECT_TRUE(verified(lines, manifest).isSound());
}

TEST(VerifyExportTest, gapsThatTheManifestListsAreSound)
{
    const auto [manifest, lines] = exportedRuns({{10, 20}, {30, 30}, {999, kCount}});
    EXPECT_TRUE(verified(lines, manifest).isSound());
    EXPECT_EQ(verified(lines).chain.flaw, (Flaw{21, FlawKind::Missing, 12, ""}));
}

TEST(VerifyExportTest, anExportOfNothingIsSound)
{
    const auto [manifest, lines] = exportedRuns({});
    EXPECT_EQ(lines, "");
    EXPECT_TRUE(verified(lines, manifest).isSound());
}

TEST(VerifyExportTest, aLineThatIsNotEndedIsUnreadable)
{
    auto [manifest, lines] = exportedRuns({{1, kCount}});
    lines += "{";
    EXPECT_EQ(verified(lines).chain.flaw, (Flaw{kCount + 1, FlawKind::Unreadable, kCount + 1, ""}));
    lines.resize(lines.size() - 2);
    EXPECT_EQ(verified(lines).chain.flaw, (Flaw{kCount, FlawKind::Unreadable, kCount, ""}));
}

TEST(VerifyExportTest, otherLineEndsAreNotCanonical)
{
    auto [manifest, lines] = exportedRuns({{1, 3}});
    lines.insert(lines.find('\n'), "\r");
    EXPECT_EQ(verified(lines).chain.flaw->kind, FlawKind::NotCanonical);
    EXPECT_EQ(verified("\xEF\xBB\xBF" + lines).chain.flaw->kind, FlawKind::Unreadable);
}

// Edits of the file beside its manifest, at the first, a middle and the last line; also those that
// leave a chain that is sound by itself.
class Edited : public testing::TestWithParam<Seq> {
protected:
    void SetUp() override
    {
        exported = exportedRuns({{1, kCount}});
        std::size_t from = 0;
        for (std::size_t end; (end = exported.lines.find('\n', from)) != std::string::npos;
             from = end + 1)
            lines.push_back(exported.lines.substr(from, end - from + 1));
    }
    std::string joined() const
    {
        std::string all;
        for (const std::string& line : lines)
            all += line;
        return all;
    }
    std::size_t at() const { return static_cast<std::size_t>(GetParam() - 1); }

    Exported exported;
    std::vector<std::string> lines;
};

INSTANTIATE_TEST_SUITE_P(Export, Edited, testing::Values(1, kCount / 2, kCount),
                         [](const auto& row) { return "AtSeq" + std::to_string(row.param); });

TEST_P(Edited, oneByteIsFoundTwice)
{
    const auto place = lines[at()].find("tap-");
    lines[at()][place] = 'T';
    const ExportVerification found = verified(joined(), exported.manifest);
    EXPECT_TRUE(found.otherBytes);
    EXPECT_EQ(found.chain.flaw, (Flaw{GetParam(), FlawKind::BadHash, GetParam(), ""}));
}

TEST_P(Edited, aCutTailIsFoundByTheManifest)
{
    lines.resize(at());
    const ExportVerification found = verified(joined(), exported.manifest);
    EXPECT_TRUE(found.otherBytes);
    ASSERT_TRUE(found.chain.flaw);
    EXPECT_EQ(found.chain.flaw->seq, GetParam());
    EXPECT_EQ(found.chain.flaw->kind, FlawKind::Truncated);
    EXPECT_TRUE(verified(joined()).isSound());  // what no chain shows by itself
}

TEST_P(Edited, aFileWrittenAnewIsFoundByTheManifest)
{
    auto log = test::sampleLog(kCount);
    for (std::size_t i = at(); i < log.size(); ++i) {
        if (i == at())
            log[i].payload = R"({"text":"all was well"})";
        chain(log[i], i == 0 ? Hash{} : log[i - 1].hash);
    }
    std::string anew;
    for (const Entry& entry : log)
        anew += toLine({entry, std::nullopt}) + "\n";
    const ExportVerification found = verified(anew, exported.manifest);
    EXPECT_TRUE(found.otherBytes);
    ASSERT_TRUE(found.chain.flaw);
    EXPECT_EQ(found.chain.flaw->kind, FlawKind::HeadMismatch);
    EXPECT_FALSE(verified(anew).chain.flaw);
}

TEST(VerifyExportTest, anotherFileOfTheSetIsHeldAgainstTheManifest)
{
    Manifest manifest;
    manifest.files = {{"bags.csv", 3, sha256("abc")}};
    EXPECT_FALSE(contradicts(manifest, "bags.csv", 3, sha256("abc")));
    EXPECT_TRUE(contradicts(manifest, "bags.csv", 3, sha256("abd")));
    EXPECT_TRUE(contradicts(manifest, "bags.csv", 4, sha256("abc")));
    EXPECT_FALSE(contradicts(manifest, "other.csv", 4, sha256("abd")));
}

}  // namespace
}  // namespace bathside
