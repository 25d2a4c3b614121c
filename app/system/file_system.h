#pragma once

// What kind of disk a folder is on, judged before a trail is opened there.
//
// SQLite's write-ahead log needs memory shared between all who open it, so a trail must not lie on
// a network file system. Source: sqlite.org, "Write-Ahead Logging", section "Disadvantages";
// numbers: statfs(2) and linux/magic.h.

#include <cstdint>
#include <filesystem>

namespace bathside::app {

enum class DiskKind : std::uint8_t {
    Local,
    Network,   // another machine's disk, or one behind a program (FUSE), which may be just that
    InMemory,  // gone with the power
    Unknown,   // the system would not say
};

/// Of `path`, or of the nearest folder above it that is there.
[[nodiscard]] DiskKind diskKindOf(const std::filesystem::path& path);

/// Of a number as statfs gives it in `f_type`.
[[nodiscard]] DiskKind diskKindOf(std::uint32_t magic);

}  // namespace bathside::app
