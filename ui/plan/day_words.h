#pragma once

// The plan told in words, the gravest first: what cannot be done, how the day goes, what to look
// at, each line's rate and each hanging bag's end.

#include "ui/record/record_text.h"
#include "ui/text/plan_clock.h"

namespace bathside::ui {

[[nodiscard]] Sheet sheetOf(const DayPlan& day, const PlanClock& clock);
/// How many of its lines say that something is not as it should be.
[[nodiscard]] int troublesOf(const DayPlan& day);

}  // namespace bathside::ui
