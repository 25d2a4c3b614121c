// Every write, sync, cut and opening of a run fails once, or fails from then on; and the power goes
// at every operation. Method: SQLite, "How SQLite Is Tested" (I/O error testing in two passes;
// crash testing with a VFS that drops and tears what was not synced).

#include <cerrno>
#include <csignal>
#include <iostream>

#include <gtest/gtest.h>
#include <sys/resource.h>

#include "tests/core/trail/store/support.h"
#include "tests/faults/fault_disk.h"
#include "tests/faults/store_workload.h"
#include "tests/support/temp_folder.h"

namespace bathside::store {
namespace {

using test::DiskOp;
using test::Fault;
using test::faultAfterRestart;
using test::FaultDisk;
using test::isLong;
using test::StoreWorkload;
using test::TempFolder;
using Health = RecordState::Health;

int taps() { return isLong() ? 60 : 10; }

struct Sweep {
    const char* name;
    DiskOp op;
    bool always;
    int error;
};

class EveryOperationFails : public testing::TestWithParam<Sweep> {};

TEST_P(EveryOperationFails, andNothingAcknowledgedIsLost)
{
    const Sweep& sweep = GetParam();
    int points = 0;
    for (int nth = 1; nth < 100'000; ++nth) {
        const TempFolder folder;
        FaultDisk disk;
        Seq acknowledged = 0;
        Seq handedOver = 0;
        {
            StoreWorkload work(folder.path());
            ASSERT_TRUE(work.start());
            disk.plan({.op = sweep.op, .nth = nth, .always = sweep.always, .error = sweep.error});
            for (int i = 0; i < taps(); ++i)
                work.tap();
            acknowledged = work.acknowledged();
            handedOver = work.handedOver();
            if (!sweep.always) {
                EXPECT_EQ(acknowledged, handedOver) << "one failure is got over, at " << nth;
            }
            disk.heal();
        }
        ASSERT_EQ(faultAfterRestart(folder.path(), acknowledged), "")
            << sweep.name << " at " << nth;
        if (!disk.struck())
            break;
        ++points;
    }
    std::cout << points << " points\n";
    EXPECT_GT(points, sweep.op == DiskOp::Write || sweep.op == DiskOp::Sync ? 8 : 0);
}

INSTANTIATE_TEST_SUITE_P(Store, EveryOperationFails,
                         testing::Values(Sweep{"writeOnceEIO", DiskOp::Write, false, EIO},
                                         Sweep{"writeForeverEIO", DiskOp::Write, true, EIO},
                                         Sweep{"writeOnceENOSPC", DiskOp::Write, false, ENOSPC},
                                         Sweep{"writeForeverENOSPC", DiskOp::Write, true, ENOSPC},
                                         Sweep{"syncOnceEIO", DiskOp::Sync, false, EIO},
                                         Sweep{"syncForeverEIO", DiskOp::Sync, true, EIO},
                                         Sweep{"syncOnceENOSPC", DiskOp::Sync, false, ENOSPC},
                                         Sweep{"syncForeverENOSPC", DiskOp::Sync, true, ENOSPC},
                                         Sweep{"cutOnceEIO", DiskOp::Truncate, false, EIO},
                                         Sweep{"cutForeverEIO", DiskOp::Truncate, true, EIO}),
                         [](const auto& test) { return std::string(test.param.name); });

// Cuts and openings happen at the start, when the log is emptied and when a spool is made.
TEST(StoreFaultsTest, aStartThatFailsSaysSoAndTheNextOneGoesOn)
{
    for (const DiskOp op : {DiskOp::Open, DiskOp::Write, DiskOp::Sync, DiskOp::Truncate}) {
        for (int nth = 1; nth < 1000; ++nth) {
            const TempFolder folder;
            FaultDisk disk;
            Seq acknowledged = 0;
            {
                StoreWorkload work(folder.path());
                ASSERT_TRUE(work.start());
                for (int i = 0; i < taps(); ++i)
                    work.tap();
                acknowledged = work.acknowledged();
                ASSERT_EQ(acknowledged, work.handedOver());
                // The process dies here: its log stays.
                std::filesystem::create_directory(folder / "left");
                for (const std::string name : {"trail.db", "trail.db-wal"})
                    std::filesystem::copy(folder / name, folder / ("left/" + name));
            }
            disk.plan({.op = op, .nth = nth, .always = true, .error = EIO});
            {
                StoreWorkload again(folder / "left");
                std::ignore = again.start();
            }
            disk.heal();
            ASSERT_EQ(faultAfterRestart(folder / "left", acknowledged), "")
                << static_cast<int>(op) << " at " << nth;
            if (!disk.struck())
                break;
        }
    }
}

TEST(StoreFaultsTest, aSpoolThatCannotBeMadeKeepsTheTapsInMemory)
{
    const TempFolder folder;
    FaultDisk disk;
    StoreWorkload work(folder.path());
    ASSERT_TRUE(work.start());
    work.tap();
    disk.plan({.op = DiskOp::Write, .nth = 1, .always = true, .error = ENOSPC});
    work.tap();
    work.tap();
    EXPECT_EQ(work.recorder().state().health, Health::NotRecorded);
    EXPECT_EQ(work.recorder().state().trouble.errorNumber, ENOSPC);
    EXPECT_EQ(work.acknowledged(), 1);
    disk.heal();
    work.tap();
    EXPECT_EQ(work.recorder().state().health, Health::Recorded);
    EXPECT_EQ(work.acknowledged(), work.handedOver());
    EXPECT_EQ(faultAfterRestart(folder / "nothing here", 0), "does not start: write failed ");
}

// The findings' case: the sync's error is told, and the event is there all the same.
TEST(StoreFaultsTest, anEventThatWasThereAfterAllIsThereOnce)
{
    const TempFolder folder;
    FaultDisk disk;
    Seq acknowledged = 0;
    {
        StoreWorkload work(folder.path());
        ASSERT_TRUE(work.start());
        work.tap();
        disk.plan(
            {.op = DiskOp::Sync, .nth = 1, .always = true, .error = EIO, .onlyIn = "trail.db-wal"});
        work.tap();
        EXPECT_EQ(work.recorder().state().health, Health::NotConfirmed);
        EXPECT_EQ(work.recorder().state().trouble.fault, StoreFault::Unconfirmed);
        EXPECT_EQ(work.recorder().state().trouble.errorNumber, EIO);
        EXPECT_EQ(work.acknowledged(), 2) << "in the spool";
        disk.heal();
        work.tap();
        EXPECT_EQ(work.recorder().state().health, Health::Recorded);
        EXPECT_EQ(work.recorder().state().merged, 0) << "it was in the trail";
        acknowledged = work.acknowledged();
    }
    EXPECT_EQ(acknowledged, 4);
    EXPECT_EQ(faultAfterRestart(folder.path(), acknowledged), "");
    EXPECT_TRUE(std::filesystem::exists(folder / "trail.db.spool-1.merged"));
}

// After a failed sync, what is read back may be in memory alone: it counts only when it was written
// again. The power goes right after the trail has come back.
TEST(StoreFaultsTest, whatCameBackAfterAFailedSyncSurvivesThePower)
{
    for (unsigned seed = 1; seed <= 50; ++seed) {
        const TempFolder folder;
        std::mt19937 random(seed);
        Seq acknowledged = 0;
        {
            FaultDisk disk;
            StoreWorkload work(folder.path());
            ASSERT_TRUE(work.start());
            for (int i = 0; i < 5; ++i)
                work.tap();
            disk.plan({.op = DiskOp::Sync, .nth = 1, .always = false, .error = EIO});
            work.tap();
            work.tap();
            ASSERT_EQ(work.recorder().state().merges, 1);
            acknowledged = work.acknowledged();
            ASSERT_EQ(acknowledged, work.handedOver());
            disk.leaveTo(folder / "left", random);
        }
        ASSERT_EQ(faultAfterRestart(folder / "left", acknowledged), "") << seed;
    }
}

// Runs taps until the power goes at an operation, and leaves what the disk may hold in so many
// folders.
struct PowerCut {
    bool reached = false;
    Seq acknowledged = 0;
};

PowerCut cutPower(const TempFolder& folder, int at, int damages, std::mt19937& random)
{
    FaultDisk disk;
    StoreWorkload work(folder.path());
    EXPECT_TRUE(work.start());
    disk.cutPowerAt(at);
    PowerCut cut;
    for (int i = 0; i < taps() && !disk.isDead(); ++i) {
        work.tap();
        cut.acknowledged = work.acknowledged();
    }
    cut.reached = disk.isDead();
    for (int damage = 0; damage < damages; ++damage)
        disk.leaveTo(folder / ("left" + std::to_string(damage)), random);
    return cut;
}

TEST(StoreFaultsTest, thePowerGoesAtEveryOperation)
{
    const int damages = isLong() ? 50 : 4;
    std::mt19937 random(1);
    for (int at = 1;; ++at) {
        const TempFolder folder;
        const PowerCut cut = cutPower(folder, at, damages, random);
        const FaultDisk next;  // a machine whose disk works, and syncs fast
        for (int damage = 0; damage < damages; ++damage)
            ASSERT_EQ(
                faultAfterRestart(folder / ("left" + std::to_string(damage)), cut.acknowledged), "")
                << "power cut at " << at;
        if (!cut.reached)
            break;
    }
}

TEST(StoreFaultsTest, aSettingThatReadsBackOtherwiseIsRefused)
{
    for (const auto& [pragma, answer] :
         {std::pair{"synchronous", "1"}, std::pair{"journal_mode", "delete"},
          std::pair{"locking_mode", "normal"}, std::pair{"foreign_keys", "0"},
          std::pair{"recursive_triggers", "0"}, std::pair{"trusted_schema", "1"},
          std::pair{"cell_size_check", "0"}, std::pair{"mmap_size", "4096"},
          std::pair{"journal_size_limit", "-1"}}) {
        const TempFolder folder;
        FaultDisk disk;
        disk.answer(pragma, answer);
        const auto trail = TrailDb::open(folder / "trail.db", Mode::Station);
        ASSERT_FALSE(trail) << pragma;
        EXPECT_EQ(trail.error().trouble.fault, StoreFault::Unsafe);
        EXPECT_EQ(trail.error().check, Check::Settings);
        EXPECT_EQ(trail.error().detail, pragma);
    }
}

struct Refusal {
    int error;
    StoreFault fault;
};

TEST(StoreFaultsTest, aFolderThatCannotBeWrittenToIsNamedForWhatItIs)
{
    for (const Refusal& row :
         {Refusal{EACCES, StoreFault::NotPermitted}, Refusal{EROFS, StoreFault::ReadOnly},
          Refusal{ENOSPC, StoreFault::NoSpace}}) {
        const TempFolder folder;
        FaultDisk disk;
        disk.plan(
            {.op = DiskOp::Open, .nth = 1, .always = true, .error = row.error, .onlyIn = "-wal"});
        const auto trail = TrailDb::open(folder / "trail.db", Mode::Station);
        ASSERT_FALSE(trail);
        EXPECT_EQ(trail.error().trouble.fault, row.fault);
        EXPECT_EQ(trail.error().trouble.errorNumber, row.error);
    }
}

// No shim: the kernel itself refuses to let the file grow (setrlimit(2), RLIMIT_FSIZE).
TEST(StoreFaultsTest, theKernelRefusesToLetTheTrailGrow)
{
    const TempFolder folder;
    StoreWorkload work(folder.path());
    ASSERT_TRUE(work.start());
    for (int i = 0; i < 60; ++i)
        work.tap();
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    const rlimit tight{.rlim_cur = 400'000, .rlim_max = before.rlim_max};
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &tight), 0);
    int more = 0;
    while (work.recorder().state().failures == 0 && ++more < 5000)
        work.tap();
    const RecordState full = work.recorder().state();
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, SIG_DFL);
    EXPECT_EQ(full.failures, 1);
    EXPECT_EQ(full.trouble.errorNumber, EFBIG);
    EXPECT_EQ(full.health, Health::NotConfirmed) << "the spool is small and takes it";
    work.tap();
    EXPECT_EQ(work.recorder().state().health, Health::Recorded);
    EXPECT_EQ(work.acknowledged(), work.handedOver());
}

}  // namespace
}  // namespace bathside::store
