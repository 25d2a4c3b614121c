// A copy while the disk fails: every write, sync and opening fails once, or from then on, and the
// power goes at every operation. The trail must go on as if nothing had been asked, and what bears
// the copy's name must be whole. Method: SQLite, "How SQLite Is Tested".

#include <cerrno>
#include <csignal>
#include <iostream>

#include <gtest/gtest.h>
#include <sys/resource.h>

#include "core/trail/store/check.h"
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
using test::StoreWorkload;
using test::TempFolder;
using Health = RecordState::Health;

constexpr int kTaps = 12;

TrailDb& trailOf(StoreWorkload& work) { return *dynamic_cast<TrailDb*>(work.recorder().trail()); }

/// A copy is there under its name only when it is whole; nothing half is left under another.
void expectWholeOrNotThere(const std::filesystem::path& copy, bool made, const Head& head)
{
    EXPECT_EQ(std::filesystem::exists(copy), made);
    EXPECT_FALSE(std::filesystem::exists(copy.string() + ".partial"));
    if (!made)
        return;
    const auto read = TrailDb::open(copy, Mode::ReadOnly);
    ASSERT_TRUE(read);
    EXPECT_TRUE(check(**read, {head}).isSound());
    EXPECT_EQ((*read)->head(), head);
}

struct CopySweep {
    const char* name;
    DiskOp op;
    bool always;
    int error;
    const char* onlyIn;
};

class EveryOperationOfACopyFails : public testing::TestWithParam<CopySweep> {};

TEST_P(EveryOperationOfACopyFails, andTheTrailGoesOn)
{
    const CopySweep& sweep = GetParam();
    int points = 0;
    for (int nth = 1; nth < 100'000; ++nth) {
        const TempFolder folder;
        FaultDisk disk;
        bool struck = false;
        {
            StoreWorkload work(folder.path());
            ASSERT_TRUE(work.start());
            for (int i = 0; i < kTaps; ++i)
                work.tap();
            const Head head = trailOf(work).head();
            disk.plan({.op = sweep.op,
                       .nth = nth,
                       .always = sweep.always,
                       .error = sweep.error,
                       .onlyIn = sweep.onlyIn});
            const auto copied = trailOf(work).copyTo(folder / "copy.db");
            struck = disk.struck();
            disk.heal();
            if (struck && !copied) {
                EXPECT_NE(copied.error().fault, StoreFault::Damaged) << nth;
            }
            expectWholeOrNotThere(folder / "copy.db", copied.has_value(), head);
            for (int i = 0; i < kTaps; ++i)
                work.tap();
            EXPECT_EQ(work.recorder().state().health, Health::Recorded) << nth;
            EXPECT_EQ(work.acknowledged(), work.handedOver()) << nth;
        }
        ASSERT_EQ(faultAfterRestart(folder.path(), 1), "") << sweep.name << " at " << nth;
        if (!struck)
            break;
        ++points;
    }
    std::cout << points << " points\n";
    EXPECT_GT(points, 0);
}

INSTANTIATE_TEST_SUITE_P(
    Store, EveryOperationOfACopyFails,
    testing::Values(CopySweep{"writeOnceEIO", DiskOp::Write, false, EIO, "copy"},
                    CopySweep{"writeForeverENOSPC", DiskOp::Write, true, ENOSPC, "copy"},
                    CopySweep{"writeOnceENOSPC", DiskOp::Write, false, ENOSPC, "copy"},
                    CopySweep{"openOnceEACCES", DiskOp::Open, false, EACCES, "copy"},
                    CopySweep{"openOnceEROFS", DiskOp::Open, false, EROFS, "copy"}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(StoreCopyFaultsTest, aFullStickIsNamedForWhatItIs)
{
    const TempFolder folder;
    FaultDisk disk;
    StoreWorkload work(folder.path());
    ASSERT_TRUE(work.start());
    work.tap();
    disk.plan({.op = DiskOp::Write, .nth = 2, .always = true, .error = ENOSPC, .onlyIn = "copy"});
    const auto copied = trailOf(work).copyTo(folder / "copy.db");
    ASSERT_FALSE(copied);
    EXPECT_EQ(copied.error().fault, StoreFault::NoSpace);
    work.tap();
    EXPECT_EQ(work.acknowledged(), work.handedOver()) << "the trail's own disk is not full";
}

// The power goes while the copy is written: the trail has all that was acknowledged, and what bears
// the copy's name, if anything does, is whole.
TEST(StoreCopyFaultsTest, thePowerGoesAtEveryOperationOfACopy)
{
    std::mt19937 random(3);
    for (int at = 1;; ++at) {
        const TempFolder folder;
        bool reached = false;
        Seq acknowledged = 0;
        {
            FaultDisk disk;
            StoreWorkload work(folder.path());
            ASSERT_TRUE(work.start());
            for (int i = 0; i < kTaps; ++i)
                work.tap();
            acknowledged = work.acknowledged();
            disk.cutPowerAt(at);
            std::ignore = trailOf(work).copyTo(folder / "copy.db");
            reached = disk.isDead();
            disk.leaveTo(folder / "left", random);
        }
        ASSERT_EQ(faultAfterRestart(folder / "left", acknowledged), "") << "power cut at " << at;
        if (!reached)
            break;
    }
}

// No shim: the kernel itself refuses to let the copy grow (setrlimit(2), RLIMIT_FSIZE).
TEST(StoreCopyFaultsTest, theKernelRefusesToLetTheCopyGrow)
{
    const TempFolder folder;
    const auto trail = opened(written(folder / "trail.db", test::TrailDays().day(2000)));
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    const rlimit tight{.rlim_cur = 100'000, .rlim_max = before.rlim_max};
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &tight), 0);
    const auto copied = trail->copyTo(folder / "copy.db");
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, SIG_DFL);
    ASSERT_FALSE(copied);
    EXPECT_EQ(copied.error().errorNumber, EFBIG);
    expectWholeOrNotThere(folder / "copy.db", false, {});
    EXPECT_TRUE(trail->copyTo(folder / "copy.db"));
    expectWholeOrNotThere(folder / "copy.db", true, trail->head());
}

}  // namespace
}  // namespace bathside::store
