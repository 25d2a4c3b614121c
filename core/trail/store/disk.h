#pragma once

// What the store asks of the disk beside SQLite: names that survive a power cut, and where a file
// lies.

#include <filesystem>
#include <string_view>

#include "core/base/result.h"
#include "core/trail/store/sqlite_trouble.h"

namespace bathside::store {

/// Syncs a file or a folder. Never of a trail that is open: closing the descriptor drops its locks.
[[nodiscard]] Result<void, StoreTrouble> syncPath(const std::filesystem::path& path);

/// Renames and syncs the folder.
[[nodiscard]] Result<void, StoreTrouble> renameDurably(const std::filesystem::path& from,
                                                       const std::filesystem::path& to);

/// Whether a file system of that name (as the kernel calls it) lies on another machine.
[[nodiscard]] bool isNetworkFileSystem(std::string_view type);

}  // namespace bathside::store
