#include "app/system/trail_lock.h"

#include <array>
#include <cerrno>
#include <charconv>
#include <string>
#include <utility>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace bathside::app {
namespace {

long writtenHolder(int file)
{
    std::array<char, 24> text{};
    const ssize_t length = pread(file, text.data(), text.size(), 0);
    long holder = 0;
    if (length > 0)
        std::from_chars(text.data(), text.data() + length, holder);
    return holder;
}

// For people and for `Taken` alone; the lock does not depend on it.
void writeHolder(int file)
{
    const std::string text = std::to_string(getpid()) + "\n";
    if (ftruncate(file, 0) == 0) [[maybe_unused]]
        const ssize_t written = pwrite(file, text.data(), text.size(), 0);
}

}  // namespace

Result<TrailLock, LockFault> TrailLock::take(const std::filesystem::path& trail)
{
    std::filesystem::path name = trail;
    name += ".lock";
    TrailLock lock(open(name.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644));
    if (lock.m_file < 0)
        return failure(LockFault{.why = LockFault::Why::Unwritable, .errorNumber = errno});
    if (flock(lock.m_file, LOCK_EX | LOCK_NB) != 0)
        return failure(
            errno == EWOULDBLOCK
                ? LockFault{.why = LockFault::Why::Taken, .holder = writtenHolder(lock.m_file)}
                : LockFault{.why = LockFault::Why::Unwritable, .errorNumber = errno});
    writeHolder(lock.m_file);
    return lock;
}

TrailLock::TrailLock(TrailLock&& other) noexcept : m_file(std::exchange(other.m_file, -1)) {}

TrailLock& TrailLock::operator=(TrailLock&& other) noexcept
{
    std::swap(m_file, other.m_file);
    return *this;
}

TrailLock::~TrailLock()
{
    if (m_file >= 0)
        close(m_file);
}

}  // namespace bathside::app
