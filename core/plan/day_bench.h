#pragma once

// The bench's part of the day's plan: when each bag is made, or what would have to change.

#include "core/plan/plan.h"

namespace bathside::plan {

[[nodiscard]] BenchPlan planBench(const DayInput& input, const Stores& stores,
                                  const PlannedLines& lines, Effort& effort);

}  // namespace bathside::plan
