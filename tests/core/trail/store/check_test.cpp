#include "core/trail/store/check.h"

#include "tests/core/trail/store/support.h"
#include "tests/support/sample_log.h"
#include "tests/support/temp_folder.h"

namespace bathside::store {
namespace {

using test::TempFolder;

constexpr Seq kLength = 60;

// The classes of tampering that the project's findings list, done to the database itself. {n}
// stands for the seq, {m} for the one after it. What is left to a witness is tested with the
// verifier.
struct Tampering {
    const char* name;
    const char* sql;
    Seq blamed;  // relative to n; the first seq at which the trail is no longer what was written
    bool last = true;  // makes sense for the last entry, too
};

constexpr const char* kRow =
    "at, boot_us, boot_id, station, person, proof, tap, place, by_receipt, card, kind, payload, "
    "spool_seq, spool_hash";

const std::vector<Tampering>& classes()
{
    static const std::vector<Tampering> all{
        {"at", "UPDATE event SET at = '2026-03-05T05:00:00.000Z' WHERE seq = {n}", 0},
        {"atInAnotherForm", "UPDATE event SET at = replace(at, 'T', ' ') WHERE seq = {n}", 0},
        {"bootClock", "UPDATE event SET boot_us = boot_us + 1 WHERE seq = {n}", 0},
        {"bootId",
         "UPDATE event SET boot_id = '00000000-0000-0000-0000-000000000000' WHERE seq = {n}", 0},
        {"bootIdInAnotherForm", "UPDATE event SET boot_id = upper(boot_id) WHERE seq = {n}", 0},
        {"station", "UPDATE event SET station = 'bench 2' WHERE seq = {n}", 0},
        {"person", "UPDATE event SET person = 'XX', proof = 'claimed' WHERE seq = {n}", 0},
        {"personWithoutProof", "UPDATE event SET person = 'XX', proof = NULL WHERE seq = {n}", 0},
        {"tap", "UPDATE event SET tap = tap || 'x' WHERE seq = {n}", 0},
        {"place", "UPDATE event SET place = 'elsewhere' WHERE seq = {n}", 0},
        {"placeAsEmptyText", "UPDATE event SET place = '' WHERE seq = {n}", 0},
        {"byReceipt", "UPDATE event SET by_receipt = 1 - by_receipt WHERE seq = {n}", 0},
        {"card", "UPDATE event SET card = 'dd' WHERE seq = {n}", 0},
        {"kind", "UPDATE event SET kind = 'note.made.' WHERE seq = {n}", 0},
        {"payload", "UPDATE event SET payload = '{\"text\":\"other\"}' WHERE seq = {n}", 0},
        {"payloadSpaced", "UPDATE event SET payload = ' ' || payload WHERE seq = {n}", 0},
        {"spoolOrigin", "UPDATE event SET spool_seq = 1, spool_hash = zeroblob(32) WHERE seq = {n}",
         0},
        {"spoolWithoutHash", "UPDATE event SET spool_seq = 7, spool_hash = NULL WHERE seq = {n}",
         0},
        {"hash", "UPDATE event SET hash = randomblob(32) WHERE seq = {n}", 0},
        {"deleted", "DELETE FROM event WHERE seq = {n}", 0, false},
        {"swapped",
         "UPDATE event SET seq = -1 WHERE seq = {n}; UPDATE event SET seq = {n} WHERE seq = {m};"
         "UPDATE event SET seq = {m} WHERE seq = -1",
         0, false},
        {"duplicated",
         "UPDATE event SET seq = -seq - 1 WHERE seq > {n}; UPDATE event SET seq = -seq WHERE seq < "
         "0;"
         "INSERT INTO event SELECT {m}, {row}, randomblob(32) FROM event WHERE seq = {n}",
         1},
    };
    return all;
}

std::string filled(std::string sql, Seq seq)
{
    const auto replace = [&](const std::string& what, const std::string& with) {
        for (auto at = sql.find(what); at != std::string::npos; at = sql.find(what))
            sql.replace(at, what.size(), with);
    };
    replace("{n}", std::to_string(seq));
    replace("{m}", std::to_string(seq + 1));
    replace("{row}", kRow);
    return sql;
}

struct Where {
    const char* name;
    Seq seq;
};

class Tampered : public testing::TestWithParam<std::tuple<Tampering, Where>> {};

TEST_P(Tampered, isNamedByItsFirstBadSeq)
{
    const auto& [tampering, where] = GetParam();
    if (where.seq == kLength && !tampering.last)
        return;  // no entry after it, or a cut tail: only a witness can tell
    const TempFolder folder;
    const auto file = written(folder / "trail.db", test::sampleLog(kLength));
    const auto [code, message] = tamper(file, filled(tampering.sql, where.seq));
    ASSERT_EQ(code, SQLITE_OK) << message;
    const auto trail = opened(file, Mode::Salvage);
    const auto found = verifyChain(*trail);
    ASSERT_TRUE(found);
    ASSERT_TRUE(found->flaw);
    EXPECT_EQ(found->flaw->seq, where.seq + tampering.blamed) << nameOf(found->flaw->kind);
    EXPECT_FALSE(check(*trail).isSound());
}

INSTANTIATE_TEST_SUITE_P(Check, Tampered,
                         testing::Combine(testing::ValuesIn(classes()),
                                          testing::Values(Where{"first", 1}, Where{"middle", 30},
                                                          Where{"last", kLength})),
                         [](const auto& test) {
                             return std::string(std::get<0>(test.param).name) + "_" +
                                    std::get<1>(test.param).name;
                         });

TEST(CheckTest, aCleanTrailIsSound)
{
    const TempFolder folder;
    const auto log = test::sampleLog(kLength);
    const auto trail = opened(written(folder / "trail.db", log));
    const Soundness found = check(*trail, {{20, log[19].hash}, {kLength, log.back().hash}});
    EXPECT_TRUE(found.isSound());
    EXPECT_EQ(found.chain.count, kLength);
    EXPECT_EQ(found.chain.head, trail->head());
}

TEST(CheckTest, aCutTailIsFoundByAWitness)
{
    const TempFolder folder;
    const auto log = test::sampleLog(kLength);
    const auto file = written(folder / "trail.db", log);
    ASSERT_EQ(tamper(file, "DELETE FROM event WHERE seq = 60").first, SQLITE_OK);
    const auto trail = opened(file);
    EXPECT_FALSE(verifyChain(*trail)->flaw);
    const auto flaw = verifyChain(*trail, {{kLength, log.back().hash}})->flaw;
    ASSERT_TRUE(flaw);
    EXPECT_EQ(flaw->kind, FlawKind::Truncated);
    EXPECT_EQ(flaw->seq, kLength);
}

TEST(CheckTest, aChangedProjectionIsNotABrokenChain)
{
    const TempFolder folder;
    const auto file = written(folder / "trail.db", test::sampleLog(kLength));
    ASSERT_EQ(tool(file, "INSERT INTO subject_index VALUES (5, 'K99', 7)").first, SQLITE_OK);
    const Soundness found = check(*opened(file));
    EXPECT_FALSE(found.chain.flaw);
    EXPECT_EQ(found.projectionsAgree, false);
    EXPECT_FALSE(found.isSound());
}

TEST(CheckTest, damagedPagesAreTold)
{
    const TempFolder folder;
    const auto file = written(folder / "trail.db", test::sampleLog(2000));
    {
        std::FILE* const raw = std::fopen(file.c_str(), "r+b");
        std::fseek(raw, 60 * 4096 + 100, SEEK_SET);
        const std::string rubbish(3900, '\x5a');
        std::fwrite(rubbish.data(), 1, rubbish.size(), raw);
        std::fclose(raw);
    }
    const Soundness found = check(*opened(file, Mode::Salvage));
    EXPECT_FALSE(found.isSound());
    EXPECT_TRUE(!found.pages.empty() || found.trouble);
}

}  // namespace
}  // namespace bathside::store
