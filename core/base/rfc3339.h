#pragma once

// Instants as text: RFC 3339, as the trail and the scripts write them.

#include <optional>
#include <string>
#include <string_view>

#include "core/base/time.h"

namespace bathside {

/// `2026-03-05T06:10:00.000Z`: UTC, always three decimals. Years 0000 to 9999.
[[nodiscard]] std::string toRfc3339(WallTime at);
void appendRfc3339(std::string& out, WallTime at);

/// Any RFC 3339 date-time with an offset; decimals beyond ms are cut off; `:60` is the last ms of
/// that minute (POSIX time has no leap second). Nothing else is taken: no date alone, no local
/// time.
[[nodiscard]] std::optional<WallTime> fromRfc3339(std::string_view text);

}  // namespace bathside
