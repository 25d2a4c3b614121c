#pragma once

// The technical log: what a maintainer reads after something went wrong. Never the record itself,
// and no personal data beyond initials.
//
// `bathside.log` in the given folder, 1 MiB, with four older ones beside it; times in UTC. Where
// the folder cannot be written it goes to standard error and says so. Never throws; a line that
// cannot be written is lost. Qt's own messages (qWarning and the like) go there too, from any
// thread.

#include <cstdint>
#include <filesystem>
#include <string_view>

namespace bathside::app {

enum class LogsTo : std::uint8_t { File, StandardError };

/// Opens the log of this process; to be called once, before other threads start.
LogsTo startLog(const std::filesystem::path& folder);

void logInfo(std::string_view text);
void logWarning(std::string_view text);
void logError(std::string_view text);

}  // namespace bathside::app
