#pragma once

// What a plan that can be carried out asks to be looked at. (Spec: planning, rule 8.)

#include "core/plan/plan.h"

namespace bathside::plan {

/// By line and bag, then by lot. `left` is the level after the day.
[[nodiscard]] std::vector<Warning> warningsFor(const DayInput& input, const Plan& plan,
                                               const Stores& stores, const Level& left);

}  // namespace bathside::plan
