#pragma once

// Reads the day that is to be planned from its JSON document, strictly.
//
// Volumes are in mL and must be whole µL, durations in minutes and whole ms, times of day
// "HH:MM:SS" or "HH:MM:SS.mmm" (past midnight "24:10:00"). (Spec: command line, plan.) For planning
// again during the day there are more keys, each of which may be missing:
//   "now": "09:12:30"                    no pull starts before it, no line goes on before it
//   in a line:
//   "birds_done": 2310                   of "birds"
//   "open_bag":   {"volume_ml": 400, "left_ml": 120.5, "first_in_diluent": "08:41:10"}
//   "mixed_bags": [{"volume_ml": 400, "first_in_diluent": "09:05:00"}]
// The open bag hangs on the line and serves first; the mixed bags follow, oldest first; then new
// ones.

#include <string_view>

#include "core/base/result.h"
#include "core/card/fault.h"
#include "core/plan/input.h"

namespace bathside::plan {

[[nodiscard]] Result<DayInput, DocumentFault> dayInputFrom(std::string_view document);

}  // namespace bathside::plan
