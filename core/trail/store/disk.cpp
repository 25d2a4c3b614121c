#include "core/trail/store/disk.h"

#include <algorithm>
#include <array>
#include <cerrno>

#include <fcntl.h>
#include <unistd.h>

namespace bathside::store {

Result<void, StoreTrouble> syncPath(const std::filesystem::path& path)
{
    const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0)
        return failure(troubleOfSystem(errno));
    const int error = ::fsync(handle) == 0 ? 0 : errno;
    ::close(handle);
    if (error != 0)
        return failure(StoreTrouble{StoreFault::Unconfirmed, error});
    return {};
}

bool isNetworkFileSystem(std::string_view type)
{
    static constexpr std::array<std::string_view, 14> kNames{
        "nfs", "nfs4", "cifs", "smb2",  "smb3",  "smbfs", "9p",
        "afs", "ceph", "coda", "ncpfs", "ocfs2", "gfs2",  "glusterfs"};
    static constexpr std::array<std::string_view, 6> kFuse{
        "fuse.sshfs", "fuse.glusterfs", "fuse.rclone", "fuse.s3fs", "fuse.davfs", "fuse.ceph"};
    return std::ranges::find(kNames, type) != kNames.end() ||
           std::ranges::find(kFuse, type) != kFuse.end();
}

Result<void, StoreTrouble> renameDurably(const std::filesystem::path& from,
                                         const std::filesystem::path& to)
{
    std::error_code error;
    std::filesystem::rename(from, to, error);
    if (error)
        return failure(troubleOfSystem(error.value()));
    return syncPath(std::filesystem::absolute(to).parent_path());
}

}  // namespace bathside::store
