#pragma once

// The bench's part of the day's plan: when each bag is made, or what would have to change.

#include "core/plan/plan.h"

namespace bathside::plan {

using PlannedLines = std::vector<Result<LinePlan, std::vector<Reason>>>;

/// Every line from what those before it left; `level` keeps what is left in the end.
[[nodiscard]] PlannedLines planLines(const DayInput& input, const Stores& stores, Level& level,
                                     Effort& effort);

[[nodiscard]] BenchPlan planBench(const DayInput& input, const Stores& stores,
                                  const PlannedLines& lines, Effort& effort);

}  // namespace bathside::plan
