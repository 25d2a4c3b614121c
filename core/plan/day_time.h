#pragma once

// Times of the plan's day as text: "07:05:00.000"; past midnight "24:10:00.000", before it
// "-00:10:00.000".

#include <optional>
#include <string>
#include <string_view>

#include "core/plan/input.h"

namespace bathside::plan {

/// Always three decimals.
[[nodiscard]] std::string dayTimeText(DayTime at);

/// "HH:MM:SS", with one to three decimals or none; hours 00 to 99. Nothing else is taken.
[[nodiscard]] std::optional<DayTime> dayTimeFrom(std::string_view text);

}  // namespace bathside::plan
