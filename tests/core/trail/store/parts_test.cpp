// The store's small parts, each against what SQLite and the kernel document.

#include <cerrno>

#include <gtest/gtest.h>
#include <sqlite3.h>

#include "core/trail/store/connection.h"
#include "core/trail/store/disk.h"
#include "core/trail/store/event_rows.h"
#include "core/trail/store/schema.h"
#include "core/trail/store/settings.h"
#include "core/trail/store/sqlite_trouble.h"
#include "tests/support/sample_log.h"
#include "tests/support/temp_folder.h"

namespace bathside::store {
namespace {

using test::TempFolder;

// Result codes: SQLite, rescode.html. Errors: errno(3).
struct Code {
    const char* name;
    int code;
    int error;
    StoreFault before;
    StoreFault atCommit;
};

class CodeMeans : public testing::TestWithParam<Code> {};

TEST_P(CodeMeans, oneFaultBeforeTheCommitAndOneAtIt)
{
    const Code& row = GetParam();
    EXPECT_EQ(troubleOf(row.code, row.error, Moment::BeforeCommit).fault, row.before);
    EXPECT_EQ(troubleOf(row.code, row.error, Moment::AtCommit).fault, row.atCommit);
}

INSTANTIATE_TEST_SUITE_P(
    Parts, CodeMeans,
    testing::Values(
        Code{"full", SQLITE_FULL, 0, StoreFault::NoSpace, StoreFault::NoSpace},
        Code{"busy", SQLITE_BUSY, 0, StoreFault::InUse, StoreFault::InUse},
        Code{"busySnapshot", SQLITE_BUSY_SNAPSHOT, 0, StoreFault::InUse, StoreFault::InUse},
        Code{"constraint", SQLITE_CONSTRAINT_TRIGGER, 0, StoreFault::OutOfStep,
             StoreFault::OutOfStep},
        Code{"readOnly", SQLITE_READONLY_DBMOVED, 0, StoreFault::ReadOnly, StoreFault::Unconfirmed},
        Code{"notPermitted", SQLITE_PERM, EACCES, StoreFault::NotPermitted,
             StoreFault::Unconfirmed},
        Code{"cannotOpen", SQLITE_CANTOPEN, EACCES, StoreFault::NotPermitted,
             StoreFault::Unconfirmed},
        Code{"corrupt", SQLITE_CORRUPT_VTAB, 0, StoreFault::Damaged, StoreFault::Unconfirmed},
        Code{"notADatabase", SQLITE_NOTADB, 0, StoreFault::Foreign, StoreFault::Unconfirmed},
        Code{"writeNoSpace", SQLITE_IOERR_WRITE, ENOSPC, StoreFault::NoSpace,
             StoreFault::Unconfirmed},
        Code{"writeReadOnly", SQLITE_IOERR_WRITE, EROFS, StoreFault::ReadOnly,
             StoreFault::Unconfirmed},
        Code{"write", SQLITE_IOERR_WRITE, EIO, StoreFault::WriteFailed, StoreFault::Unconfirmed},
        Code{"sync", SQLITE_IOERR_FSYNC, EIO, StoreFault::WriteFailed, StoreFault::Unconfirmed},
        Code{"folderSync", SQLITE_IOERR_DIR_FSYNC, EIO, StoreFault::WriteFailed,
             StoreFault::Unconfirmed},
        Code{"noMemory", SQLITE_NOMEM, 0, StoreFault::WriteFailed, StoreFault::Unconfirmed}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(PartsTest, knowsDisksOfOtherMachines)
{
    for (const char* const name : {"nfs", "nfs4", "cifs", "smb3", "9p", "ceph", "fuse.sshfs"})
        EXPECT_TRUE(isNetworkFileSystem(name)) << name;
    for (const char* const name :
         {"ext4", "xfs", "btrfs", "f2fs", "vfat", "exfat", "tmpfs", "overlay", "fuseblk", ""})
        EXPECT_FALSE(isNetworkFileSystem(name)) << name;
}

TEST(PartsTest, renamesAndSyncs)
{
    const TempFolder folder;
    ASSERT_TRUE(Connection::open(folder / "a", Connection::Access::ReadWrite)
                    .value()
                    ->run("CREATE TABLE t (a)"));
    EXPECT_TRUE(renameDurably(folder / "a", folder / "b"));
    EXPECT_TRUE(std::filesystem::exists(folder / "b"));
    EXPECT_TRUE(syncPath(folder / "b"));
    EXPECT_EQ(renameDurably(folder / "a", folder / "b").error().errorNumber, ENOENT);
    EXPECT_EQ(syncPath(folder / "a").error().errorNumber, ENOENT);
}

std::unique_ptr<Connection> fresh(const TempFolder& folder)
{
    return std::move(*Connection::open(folder / "x.db", Connection::Access::ReadWrite));
}

TEST(PartsTest, aNewFileIsEmptyUntilItsSchemaIsMade)
{
    const TempFolder folder;
    const auto db = fresh(folder);
    ASSERT_TRUE(guard(*db, Connection::Access::ReadWrite));
    ASSERT_TRUE(makeDurable(*db));
    EXPECT_EQ(identityOf(*db), Identity::Empty);
    EXPECT_EQ(schemaDifference(*db), "origin");
    ASSERT_TRUE(makeSchema(*db));
    EXPECT_EQ(identityOf(*db), Identity::Trail);
    EXPECT_EQ(schemaDifference(*db), "");
    ASSERT_TRUE(db->run("CREATE TABLE more (a)"));
    EXPECT_EQ(schemaDifference(*db), "more");
}

TEST(PartsTest, countsThePagesOfTheLogAndEmptiesIt)
{
    const TempFolder folder;
    const auto db = fresh(folder);
    ASSERT_TRUE(guard(*db, Connection::Access::ReadWrite));
    ASSERT_TRUE(makeDurable(*db));
    ASSERT_TRUE(makeSchema(*db));
    EXPECT_GT(db->logPages(), 0);
    ASSERT_TRUE(db->checkpoint());
    EXPECT_EQ(db->logPages(), 0);
}

TEST(PartsTest, aRowKeepsBytesThatAreNoText)
{
    const TempFolder folder;
    const auto db = fresh(folder);
    ASSERT_TRUE(makeSchema(*db));
    ASSERT_TRUE(db->run("INSERT INTO origin VALUES (1, 'trail', 0, zeroblob(32), NULL)"));
    Entry entry = test::sampleLog(1).front();
    entry.tap.text = std::string("\xff\xfe tap \0 end", 12);
    auto writer = RowWriter::on(*db);
    ASSERT_TRUE(writer && writer->write(entry));
    Entry read;
    ASSERT_TRUE(readRows(*db, 1, 1, [&](const Row& row) {
        read = *row.entry;
        return true;
    }));
    EXPECT_EQ(read, entry);
}

}  // namespace
}  // namespace bathside::store
