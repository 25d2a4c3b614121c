#include "app/system/file_system.h"

#include <string>

#include <gtest/gtest.h>

#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

struct Row {
    const char* name;
    std::uint32_t magic;
    DiskKind kind;
};

class DiskKindIs : public testing::TestWithParam<Row> {};

TEST_P(DiskKindIs, byItsNumber) { EXPECT_EQ(diskKindOf(GetParam().magic), GetParam().kind); }

// Published: statfs(2), the table of f_type numbers.
INSTANTIATE_TEST_SUITE_P(
    Statfs, DiskKindIs,
    testing::Values(
        Row{"Nfs", 0x6969, DiskKind::Network}, Row{"Smb", 0x517b, DiskKind::Network},
        Row{"Cifs", 0xff534d42, DiskKind::Network}, Row{"Smb2", 0xfe534d42, DiskKind::Network},
        Row{"Fuse", 0x65735546, DiskKind::Network}, Row{"V9fs", 0x01021997, DiskKind::Network},
        Row{"Coda", 0x73757245, DiskKind::Network}, Row{"Afs", 0x5346414f, DiskKind::Network},
        Row{"Ocfs2", 0x7461636f, DiskKind::Network}, Row{"Tmpfs", 0x01021994, DiskKind::InMemory},
        Row{"Ramfs", 0x858458f6, DiskKind::InMemory}, Row{"Ext4", 0xef53, DiskKind::Local},
        Row{"Btrfs", 0x9123683e, DiskKind::Local}, Row{"Xfs", 0x58465342, DiskKind::Local},
        Row{"F2fs", 0xf2f52010, DiskKind::Local}, Row{"Vfat", 0x4d44, DiskKind::Local}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(DiskKindTest, isThatOfTheNearestFolderThatIsThere)
{
    const test::TempFolder folder;
    const DiskKind here = diskKindOf(folder.path());
    EXPECT_NE(here, DiskKind::Unknown);
    EXPECT_EQ(diskKindOf(folder.path() / "not" / "there" / "yet.db"), here);
    EXPECT_NE(diskKindOf(std::filesystem::path("not/there/yet.db")), DiskKind::Unknown);
}

TEST(DiskKindTest, seesMemoryBehindARealPath)
{
    EXPECT_EQ(diskKindOf(std::filesystem::path("/dev/shm")), DiskKind::InMemory);
}

}  // namespace
}  // namespace bathside::app
