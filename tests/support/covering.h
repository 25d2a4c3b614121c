#pragma once

// A line without breaks, priming and limited lots as an integer programme: how many bags of each
// size cover the birds. Solved by GLPK three times: fewest doses, then fewest bags with these, then
// least diluent with both.

#include <optional>

#include "core/plan/cover.h"
#include "core/plan/input.h"

namespace bathside::plan::test {

/// None: the bags there are do not cover the birds.
[[nodiscard]] std::optional<Cost> solvedAsCovering(const DayInput& input, const Line& line);

}  // namespace bathside::plan::test
