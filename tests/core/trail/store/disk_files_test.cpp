#include "core/trail/store/disk_files.h"

#include <fstream>

#include <gmock/gmock.h>

#include "tests/core/trail/store/support.h"
#include "tests/support/temp_folder.h"
#include "tests/support/trail_days.h"

namespace bathside::store {
namespace {

using test::TempFolder;
using test::TrailDays;
using testing::ElementsAre;
using testing::IsEmpty;

class DiskFilesTest : public testing::Test {
protected:
    DiskFilesTest() { std::filesystem::create_directory(m_stick); }

    /// A spool with one day in it, closed.
    std::string spool()
    {
        auto made = m_files.makeSpool(m_days.head());
        EXPECT_TRUE(made);
        EXPECT_TRUE(made->store->append(m_days.day(30)));
        return made->name;
    }

    TempFolder m_folder;
    std::filesystem::path m_stick = m_folder / "stick";
    DiskFiles m_files{{m_folder / "trail.db", {m_folder.path(), m_stick}}};
    TrailDays m_days;
};

TEST_F(DiskFilesTest, makesTheTrailTheFirstTimeAndWantsItThereAfterwards)
{
    ASSERT_TRUE(m_files.openTrail());
    std::filesystem::remove(m_folder / "trail.db");  // a stick that was pulled out
    const auto again = m_files.openTrail();
    ASSERT_FALSE(again);
    EXPECT_FALSE(std::filesystem::exists(m_folder / "trail.db"))
        << "an empty one would hide the loss";
    EXPECT_EQ(m_files.refusal()->check, Check::Place);
}

TEST_F(DiskFilesTest, spoolsStandBesideTheTrailAndAreNumbered)
{
    const std::string first = spool();
    const std::string second = spool();
    EXPECT_EQ(first, (m_folder / "trail.db.spool-1").string());
    EXPECT_EQ(second, (m_folder / "trail.db.spool-2").string());
    EXPECT_THAT(m_files.unmerged(), ElementsAre(first, second));
}

TEST_F(DiskFilesTest, aMergedSpoolIsKeptAndItsNumberNotUsedAgain)
{
    m_files.markMerged(spool());
    EXPECT_THAT(m_files.unmerged(), IsEmpty());
    EXPECT_TRUE(opened(m_folder / "trail.db.spool-1.merged", Mode::ReadOnly));
    EXPECT_EQ(spool(), (m_folder / "trail.db.spool-2").string());
}

TEST_F(DiskFilesTest, anotherFolderTakesTheSpoolWhereTheFirstDoesNot)
{
    DiskFiles files({m_folder / "trail.db", {m_folder / "gone", m_stick}});
    const auto made = files.makeSpool({});
    ASSERT_TRUE(made);
    EXPECT_EQ(made->name, (m_stick / "trail.db.spool-1").string());
}

TEST_F(DiskFilesTest, withoutAFolderNothingIsSpooled)
{
    DiskFiles files({m_folder / "trail.db", {}});
    EXPECT_FALSE(files.makeSpool({}));
    EXPECT_THAT(files.unmerged(), IsEmpty());
}

TEST_F(DiskFilesTest, opensASpoolWhereItBegan)
{
    m_days.day(20);
    const Head after = m_days.head();
    const auto again = m_files.openSpool(spool());
    ASSERT_TRUE(again);
    EXPECT_EQ(again->after, after);
    EXPECT_EQ(again->store->head(), m_days.head());
}

TEST_F(DiskFilesTest, otherFilesAreNoSpools)
{
    for (const char* const name :
         {"trail.db.spool-", "trail.db.spool-x", "trail.db.spool-1-wal", "other.db.spool-1"})
        std::ofstream(m_folder / name) << "x";
    EXPECT_THAT(m_files.unmerged(), IsEmpty());
}

TEST_F(DiskFilesTest, aMergeFromDiskBringsEverythingBack)
{
    const auto before = m_days.day(30);
    {
        auto trail = m_files.openTrail();
        ASSERT_TRUE((*trail)->append(before));
    }
    spool();
    spool();
    Failover failover(m_files, m_days.station());
    ASSERT_TRUE(failover.start());
    EXPECT_EQ(failover.state().merges, 1);
    EXPECT_EQ(failover.state().recorded, m_days.head().seq);
    EXPECT_THAT(m_files.unmerged(), IsEmpty());
}

}  // namespace
}  // namespace bathside::store
