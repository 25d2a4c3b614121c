#pragma once

// Calendar days, as certificates, expiry dates and plans name them: "YYYY-MM-DD", in no zone; and
// times of such a day.

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/time.h"

namespace bathside {

/// The day of that text, from the year 1900 on; none: it is no such day.
[[nodiscard]] std::optional<std::chrono::sys_days> dayFrom(std::string_view text);

/// `2026-03-05`; for years 0000 to 9999.
[[nodiscard]] std::string toText(std::chrono::sys_days day);

/// "HH:MM:SS" or "HH:MM:SS.mmm" from local midnight on; past it up to 47:59:59.999.
[[nodiscard]] std::optional<Millis> timeOfDayFrom(std::string_view text);

}  // namespace bathside
