#include "core/trail/store/trail_db.h"

#include <cerrno>
#include <fstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/trail/store/check.h"
#include "core/trail/store/queries.h"
#include "core/trail/store/schema.h"
#include "tests/core/trail/store/support.h"
#include "tests/support/file_bytes.h"
#include "tests/support/sample_log.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"

namespace bathside::store {
namespace {

using test::TempFolder;
using test::TrailDays;

OpenFault refused(const std::filesystem::path& file, Mode mode = Mode::Station)
{
    auto trail = TrailDb::open(file, mode);
    EXPECT_FALSE(trail.has_value());
    return trail ? OpenFault{{StoreFault::WriteFailed, -1}, Check::Place, "was opened"}
                 : trail.error();
}

std::filesystem::path trailOf(const TempFolder& folder, const std::vector<Entry>& entries)
{
    return written(folder / "trail.db", entries);
}

TEST(TrailDbTest, keepsEveryKindOfEventByteForByte)
{
    const TempFolder folder;
    const std::vector<Entry> log = test::sampleLog(500);
    const auto file = trailOf(folder, log);
    const auto trail = opened(file);
    EXPECT_EQ(contentOf(*trail), log);
    EXPECT_EQ(trail->head(), (Head{500, log.back().hash}));
}

TEST(TrailDbTest, readsASliceAndStopsWhenTold)
{
    const TempFolder folder;
    const auto trail = opened(trailOf(folder, test::sampleLog(20)));
    std::vector<Seq> seqs;
    const auto take = [&](const Entry& entry) {
        seqs.push_back(entry.seq);
        return seqs.size() < 3;
    };
    ASSERT_TRUE(trail->read(5, 9, take));
    EXPECT_THAT(seqs, testing::ElementsAre(5, 6, 7));
}

TEST(TrailDbTest, anEmptyTrailHasTheFirstHead)
{
    const TempFolder folder;
    EXPECT_EQ(opened(folder / "trail.db")->head(), Head{});
    EXPECT_EQ(opened(folder / "trail.db", Mode::ReadOnly)->head(), Head{});
}

struct Misfit {
    const char* name;
    void (*change)(std::vector<Entry>&);
};

class AppendRefuses : public testing::TestWithParam<Misfit> {};

TEST_P(AppendRefuses, whatDoesNotContinueTheHead)
{
    const TempFolder folder;
    std::vector<Entry> log = test::sampleLog(10);
    const auto trail = opened(folder / "trail.db");
    ASSERT_TRUE(trail->append(std::span(log).first(5)));
    std::vector<Entry> next(log.begin() + 5, log.end());
    GetParam().change(next);
    const auto kept = trail->append(next);
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().fault, StoreFault::OutOfStep);
    EXPECT_EQ(contentOf(*trail).size(), 5U) << "all or none";
    EXPECT_TRUE(trail->append(std::span(log).subspan(5))) << "and the right ones are still taken";
}

INSTANTIATE_TEST_SUITE_P(
    TrailDb, AppendRefuses,
    testing::Values(
        Misfit{"aGap", [](std::vector<Entry>& log) { log.erase(log.begin()); }},
        Misfit{"aGapWithin", [](std::vector<Entry>& log) { log.erase(log.begin() + 2); }},
        Misfit{"aRepeat", [](std::vector<Entry>& log) { log.insert(log.begin(), log.front()); }},
        Misfit{"aHashOfOtherContent", [](std::vector<Entry>& log) { log[3].kind = "note.made"; }},
        Misfit{"anotherHash", [](std::vector<Entry>& log) { log.back().hash[0] ^= 1; }}),
    [](const auto& test) { return std::string(test.param.name); });

// SQLite's behaviour rows for triggers (lang_conflict.html, run on 3.40.1): REPLACE deletes rows,
// and delete triggers see it only with recursive_triggers on.
struct Accident {
    const char* name;
    const char* sql;
};

class TriggersRefuse : public testing::TestWithParam<Accident> {};

TEST_P(TriggersRefuse, evenFromAnotherTool)
{
    const TempFolder folder;
    const auto log = test::sampleLog(5);
    const auto file = trailOf(folder, log);
    const auto [code, message] = tool(file, GetParam().sql);
    EXPECT_EQ(code, SQLITE_CONSTRAINT) << message;
    EXPECT_EQ(contentOf(*opened(file)), log);
}

#define BATHSIDE_INSERT(orWhat, seq, hash)                                                 \
    "INSERT " orWhat " INTO event SELECT " seq                                             \
    ", at, boot_us, boot_id, station, person, proof, tap, place, by_receipt, card, kind, " \
    "payload, spool_seq, "                                                                 \
    "spool_hash, " hash " FROM event WHERE seq = 3"

INSTANTIATE_TEST_SUITE_P(
    TrailDb, TriggersRefuse,
    testing::Values(
        Accident{"update", "UPDATE event SET person = 'XX' WHERE seq = 3"},
        Accident{"delete", "DELETE FROM event WHERE seq = 5"},
        Accident{"deleteAll", "DELETE FROM event"},
        Accident{"replaceSeq", BATHSIDE_INSERT("OR REPLACE", "3", "randomblob(32)")},
        Accident{"replaceLastSeq", BATHSIDE_INSERT("OR REPLACE", "5", "randomblob(32)")},
        Accident{"replaceHash", BATHSIDE_INSERT("OR REPLACE", "6", "hash")},
        Accident{"insertHash", BATHSIDE_INSERT("", "6", "hash")},
        Accident{"insertAfterAGap", BATHSIDE_INSERT("", "9", "randomblob(32)")},
        Accident{"insertBefore", BATHSIDE_INSERT("", "-1", "randomblob(32)")},
        Accident{"insertWithoutSeq", BATHSIDE_INSERT("", "NULL", "randomblob(32)")},
        Accident{
            "upsert",
            BATHSIDE_INSERT("", "3", "randomblob(32)") " ON CONFLICT DO UPDATE SET kind = 'x'"},
        Accident{"anotherOrigin",
                 "INSERT OR REPLACE INTO origin VALUES (1, 'trail', 7, zeroblob(32), NULL)"},
        Accident{"changedOrigin", "UPDATE origin SET seq = 1"},
        Accident{"noOrigin", "DELETE FROM origin"}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(TrailDbTest, aTypeThatDoesNotFitIsRefused)
{
    const TempFolder folder;
    const auto file = trailOf(folder, test::sampleLog(5));
    EXPECT_EQ(tool(file, BATHSIDE_INSERT("", "6", "'short'")).first, SQLITE_CONSTRAINT);
}

TEST(TrailDbTest, readsBackWhatItRestsOn)
{
    const TempFolder folder;
    const auto trail = opened(folder / "trail.db");
    const auto setting = [&](const char* name) {
        return trail->connection().value(std::string("PRAGMA ") + name)->toString().toStdString();
    };
    EXPECT_EQ(setting("journal_mode"), "wal");
    EXPECT_EQ(setting("synchronous"), "2");
    EXPECT_EQ(setting("locking_mode"), "exclusive");
    EXPECT_EQ(setting("foreign_keys"), "1");
    EXPECT_EQ(setting("recursive_triggers"), "1");
    EXPECT_EQ(setting("trusted_schema"), "0");
    EXPECT_EQ(setting("cell_size_check"), "1");
    EXPECT_EQ(setting("mmap_size"), "0");
    EXPECT_EQ(setting("journal_size_limit"), "16777216");
    EXPECT_EQ(setting("application_id"), std::to_string(kApplicationId));
    EXPECT_EQ(setting("user_version"), std::to_string(kUserVersion));
    int defensive = 0;
    sqlite3_db_config(trail->connection().native(), SQLITE_DBCONFIG_DEFENSIVE, -1, &defensive);
    EXPECT_EQ(defensive, 1);
}

// fileformat2.html: application_id is a big-endian number at offset 68, user_version at 60.
TEST(TrailDbTest, theHeaderNamesTheProgram)
{
    const TempFolder folder;
    const std::string bytes = test::bytesOf(trailOf(folder, test::sampleLog(1)));
    EXPECT_EQ(bytes.substr(0, 16), std::string("SQLite format 3\0", 16));
    EXPECT_EQ(bytes.substr(68, 4), "BthS");
    EXPECT_EQ(bytes.substr(60, 4), std::string("\0\0\0\2", 4));
}

TEST(TrailDbTest, anOrderlyEndLeavesOneFile)
{
    const TempFolder folder;
    trailOf(folder, test::sampleLog(5));
    std::vector<std::string> names;
    for (const auto& file : std::filesystem::directory_iterator(folder.path()))
        names.push_back(file.path().filename().string());
    EXPECT_THAT(names, testing::ElementsAre("trail.db"));
}

TEST(TrailDbTest, aSecondProgramIsToldThatItIsInUse)
{
    const TempFolder folder;
    const auto file = trailOf(folder, test::sampleLog(5));
    const auto held = opened(file);
    for (const Mode mode : {Mode::Station, Mode::Existing, Mode::ReadOnly})
        EXPECT_EQ(refused(file, mode).trouble.fault, StoreFault::InUse) << static_cast<int>(mode);
    EXPECT_EQ(tool(file, "SELECT count(*) FROM event").first, SQLITE_BUSY);
}

TEST(TrailDbTest, anotherProgramsDatabaseIsForeignAndStaysAsItWas)
{
    const TempFolder folder;
    const auto file = folder / "other.db";
    ASSERT_EQ(
        tool(file, "PRAGMA application_id = 7; CREATE TABLE t (a); INSERT INTO t VALUES (1)").first,
        SQLITE_OK);
    const std::string before = test::bytesOf(file);
    for (const Mode mode : {Mode::Station, Mode::Existing, Mode::ReadOnly})
        EXPECT_EQ(refused(file, mode).trouble.fault, StoreFault::Foreign);
    EXPECT_EQ(test::bytesOf(file), before);
}

TEST(TrailDbTest, aFileThatIsNoDatabaseIsForeign)
{
    const TempFolder folder;
    std::ofstream(folder / "letter.txt") << std::string(5000, 'x');
    EXPECT_EQ(refused(folder / "letter.txt").trouble.fault, StoreFault::Foreign);
    EXPECT_EQ(test::bytesOf(folder / "letter.txt"), std::string(5000, 'x'));
}

TEST(TrailDbTest, aLaterVersionsTrailIsNewerAndStaysAsItWas)
{
    const TempFolder folder;
    const auto file = trailOf(folder, test::sampleLog(5));
    ASSERT_EQ(tool(file, "PRAGMA user_version = 3").first, SQLITE_OK);
    const std::string before = test::bytesOf(file);
    for (const Mode mode : {Mode::Station, Mode::ReadOnly})
        EXPECT_EQ(refused(file, mode).trouble.fault, StoreFault::Newer);
    EXPECT_EQ(test::bytesOf(file), before);
}

// A file of version 1: without what later entries point at.
TEST(TrailDbTest, anOlderVersionsTrailIsReadAsItIsAndMadeWholeWhenItIsWritten)
{
    const TempFolder folder;
    TrailDays days;
    std::vector<Entry> log = days.day(40);
    log.push_back(days.entry(NoteCommented{log[10].seq, "seen"}));
    const auto file = written(folder / "trail.db", log);
    ASSERT_EQ(tool(file, "DELETE FROM subject_index WHERE what = 7; PRAGMA user_version = 1").first,
              SQLITE_OK);
    const std::string before = test::bytesOf(file);
    const std::vector<SeqRange> day{{1, 40}};
    {
        const auto trail = opened(file, Mode::ReadOnly);
        EXPECT_EQ(projectionsAgree(trail->connection()), true);
        EXPECT_EQ(pointingBackAt(*trail, day)->size(), 0U);
    }
    EXPECT_EQ(test::bytesOf(file), before);
    const auto trail = opened(file, Mode::Existing);
    EXPECT_EQ(projectionsAgree(trail->connection()), true);
    EXPECT_EQ(*pointingBackAt(*trail, day), std::vector<Entry>{log.back()});
    EXPECT_EQ(trail->connection().value("PRAGMA user_version")->toInt(), kUserVersion);
}

TEST(TrailDbTest, aSchemaThatWasTouchedIsNamed)
{
    const TempFolder folder;
    const auto file = trailOf(folder, test::sampleLog(5));
    ASSERT_EQ(tool(file, "DROP TRIGGER event_is_fixed").first, SQLITE_OK);
    const OpenFault fault = refused(file);
    EXPECT_EQ(fault.trouble.fault, StoreFault::Damaged);
    EXPECT_EQ(fault.check, Check::Schema);
    EXPECT_EQ(fault.detail, "event_is_fixed");
}

TEST(TrailDbTest, aTailThatWasTouchedIsFoundAtOpening)
{
    const TempFolder folder;
    const auto file = trailOf(folder, test::sampleLog(600));
    ASSERT_EQ(tamper(file, "UPDATE event SET tap = 'other' WHERE seq = 598").first, SQLITE_OK);
    const OpenFault fault = refused(file);
    EXPECT_EQ(fault.trouble.fault, StoreFault::Damaged);
    EXPECT_EQ(fault.check, Check::Tail);
    EXPECT_EQ(fault.detail, "598");
}

TEST(TrailDbTest, aDamagedPageIsToldAndTheFileStays)
{
    const TempFolder folder;
    const auto file = trailOf(folder, test::sampleLog(2000));
    std::string bytes = test::bytesOf(file);
    for (std::size_t at = 4096; at < bytes.size(); at += 4096)
        bytes[at] = '\x7f';  // no kind of b-tree page (fileformat2.html, 1.6)
    std::ofstream(file, std::ios::binary) << bytes;
    EXPECT_EQ(refused(file).trouble.fault, StoreFault::Damaged);
    EXPECT_EQ(test::bytesOf(file), bytes);
}

TEST(TrailDbTest, aTruncatedFileIsDamaged)
{
    const TempFolder folder;
    const auto file = trailOf(folder, test::sampleLog(2000));
    std::filesystem::resize_file(file, std::filesystem::file_size(file) / 2 / 4096 * 4096);
    EXPECT_EQ(refused(file).trouble.fault, StoreFault::Damaged);
}

TEST(TrailDbTest, saysWhatIsWrongWithThePlace)
{
    const TempFolder folder;
    EXPECT_EQ(refused(folder / "no folder/trail.db").trouble.errorNumber, ENOENT);
    EXPECT_EQ(refused(folder / "no.db", Mode::ReadOnly).trouble.errorNumber, ENOENT);
    EXPECT_EQ(refused(folder / "no.db", Mode::Existing).trouble.errorNumber, ENOENT);
    EXPECT_FALSE(std::filesystem::exists(folder / "no.db"));
    EXPECT_EQ(refused(folder.path()).trouble.errorNumber, EISDIR);
    trailOf(folder, test::sampleLog(1));
    EXPECT_EQ(refused(folder / "trail.db", Mode::New).trouble.errorNumber, EEXIST);
}

TEST(TrailDbTest, anEmptyFileBecomesATrail)
{
    const TempFolder folder;
    std::ofstream(folder / "trail.db").flush();
    EXPECT_TRUE(opened(folder / "trail.db"));
}

TEST(TrailDbTest, aCopyIsWholeAndVerifies)
{
    const TempFolder folder;
    const auto log = test::sampleLog(300);
    const auto trail = opened(folder / "trail.db");
    ASSERT_TRUE(trail->append(log));
    ASSERT_TRUE(trail->copyTo(folder / "copy.db"));
    EXPECT_FALSE(std::filesystem::exists(folder / "copy.db.partial"));
    const auto copy = opened(folder / "copy.db", Mode::ReadOnly);
    EXPECT_EQ(contentOf(*copy), log);
    EXPECT_TRUE(check(*copy, {trail->head()}).isSound());
    EXPECT_EQ(trail->copyTo(folder / "copy.db").error().errorNumber, EEXIST);
}

// As root, too, whom the system lets write.
TEST(TrailDbTest, aWriteProtectedFileIsNotWrittenTo)
{
    const TempFolder folder;
    const auto file = trailOf(folder, test::sampleLog(3));
    const std::string before = test::bytesOf(file);
    std::filesystem::permissions(file, std::filesystem::perms(0440));
    for (const Mode mode : {Mode::Station, Mode::Existing})
        EXPECT_EQ(refused(file, mode).trouble, (StoreTrouble{StoreFault::NotPermitted, EACCES}));
    EXPECT_FALSE(std::filesystem::exists(file.string() + "-wal"));
    EXPECT_EQ(opened(file, Mode::ReadOnly)->head().seq, 3);
    EXPECT_EQ(test::bytesOf(file), before);
}

TEST(TrailDbTest, aReadOnlyTrailTakesNothing)
{
    const TempFolder folder;
    const auto log = test::sampleLog(6);
    const auto file = trailOf(folder, {log.begin(), log.begin() + 5});
    const auto trail = opened(file, Mode::ReadOnly);
    const auto kept = trail->append(std::span(log).subspan(5));
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().fault, StoreFault::ReadOnly);
}

TEST(TrailDbTest, readsATrailThatWasNotClosedInOrder)
{
    const TempFolder folder;
    const auto log = test::sampleLog(50);
    const auto trail = opened(folder / "trail.db");
    ASSERT_TRUE(trail->append(log));
    std::filesystem::create_directory(folder / "left");
    for (const std::string name : {"trail.db", "trail.db-wal"})
        std::filesystem::copy(folder / name, folder / ("left/" + name));
    EXPECT_EQ(contentOf(*opened(folder / "left/trail.db", Mode::ReadOnly)), log);
    EXPECT_EQ(contentOf(*opened(folder / "left/trail.db")), log);
}

TEST(TrailDbTest, aSpoolContinuesWhereItIsTold)
{
    const TempFolder folder;
    TrailDays days;
    const auto first = days.day(40);
    auto spool = TrailDb::open(folder / "spool", Mode::New, {Role::Spool, days.head(), "trail.db"});
    ASSERT_TRUE(spool);
    EXPECT_EQ((*spool)->head(), days.head());
    const auto second = days.day(40);
    ASSERT_TRUE((*spool)->append(second));
    spool->reset();
    const auto again = opened(folder / "spool", Mode::Existing);
    EXPECT_EQ(again->origin(),
              (Origin{Role::Spool, {first.back().seq, first.back().hash}, "trail.db"}));
    EXPECT_EQ(contentOf(*again), second);
    EXPECT_TRUE(check(*again).isSound());
}

}  // namespace
}  // namespace bathside::store
