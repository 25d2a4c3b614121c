#include "app/system/file_system.h"

#include <algorithm>
#include <array>

#include <linux/magic.h>
#include <sys/vfs.h>

namespace bathside::app {
namespace {

constexpr std::array<std::uint32_t, 13> kNetwork{
    NFS_SUPER_MAGIC,  SMB_SUPER_MAGIC, CIFS_SUPER_MAGIC, SMB2_SUPER_MAGIC,
    CODA_SUPER_MAGIC, AFS_SUPER_MAGIC, AFS_FS_MAGIC,     NCP_SUPER_MAGIC,
    CEPH_SUPER_MAGIC, V9FS_MAGIC,      FUSE_SUPER_MAGIC, OCFS2_SUPER_MAGIC,
    0x01161970,  // GFS2, not in linux/magic.h
};
constexpr std::array<std::uint32_t, 2> kInMemory{TMPFS_MAGIC, RAMFS_MAGIC};

bool has(const auto& numbers, std::uint32_t magic)
{
    return std::ranges::find(numbers, magic) != numbers.end();
}

std::filesystem::path nearestThere(std::filesystem::path path)
{
    std::error_code ignored;
    path = std::filesystem::absolute(path, ignored);
    while (path.has_relative_path() && !std::filesystem::exists(path, ignored))
        path = path.parent_path();
    return path;
}

}  // namespace

DiskKind diskKindOf(std::uint32_t magic)
{
    if (has(kNetwork, magic))
        return DiskKind::Network;
    return has(kInMemory, magic) ? DiskKind::InMemory : DiskKind::Local;
}

DiskKind diskKindOf(const std::filesystem::path& path)
{
    struct statfs disk {};
    if (statfs(nearestThere(path).c_str(), &disk) != 0)
        return DiskKind::Unknown;
    return diskKindOf(static_cast<std::uint32_t>(disk.f_type));
}

}  // namespace bathside::app
