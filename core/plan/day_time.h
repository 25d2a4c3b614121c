#pragma once

// Times of the plan's day as text: "07:05:00.000"; past midnight "24:10:00.000", before it
// "-00:10:00.000". (Reading it: `timeOfDayFrom`, core/base/day.h.)

#include <string>

#include "core/plan/input.h"

namespace bathside::plan {

/// Always three decimals.
[[nodiscard]] std::string dayTimeText(DayTime at);

}  // namespace bathside::plan
