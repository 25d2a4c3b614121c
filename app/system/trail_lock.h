#pragma once

// One program at a time on a trail: a lock file beside it, held while this object lives.
//
// The kernel drops the lock with the process, however it ends, so nothing stale is left to judge;
// the file itself stays. Source: flock(2).

#include <cstdint>
#include <filesystem>

#include "core/base/result.h"

namespace bathside::app {

struct LockFault {
    enum class Why : std::uint8_t {
        Taken,       // another program has the trail open
        Unwritable,  // the lock file cannot be made or opened
    };
    Why why{};
    int errorNumber = 0;  // the system's, for Unwritable
    long holder = 0;      // its process, for Taken; 0 where it cannot be told
};

class TrailLock {
public:
    /// Locks `<trail>.lock`. The folder must be there.
    [[nodiscard]] static Result<TrailLock, LockFault> take(const std::filesystem::path& trail);

    TrailLock(TrailLock&& other) noexcept;
    TrailLock& operator=(TrailLock&& other) noexcept;
    ~TrailLock();

private:
    explicit TrailLock(int file) : m_file(file) {}

    int m_file = -1;
};

}  // namespace bathside::app
