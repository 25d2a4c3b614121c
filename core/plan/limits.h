#pragma once

// Which of the stores' limits a line can come to at all.

#include "core/plan/effort.h"
#include "core/plan/line_rules.h"
#include "core/plan/stores.h"

namespace bathside::plan {

/// `level` without the limits that no plan comes to which is as cheap as one that is found quickly.
/// The line's optimum is the same from both.
[[nodiscard]] Level whatCanBite(const LineRules& rules, const Stores& stores, Level level,
                                Effort& effort);

}  // namespace bathside::plan
