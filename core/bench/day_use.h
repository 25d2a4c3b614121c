#pragma once

// What the bench's events come to for the stores: what the shift used, and what is still to come.

#include <vector>

#include "core/bench/bench.h"
#include "core/stores/reconcile.h"
#include "core/stores/warnings.h"

namespace bathside {

[[nodiscard]] DayUse dayUse(const Bench& bench);

/// Of each component a dose for every planned bird that is not done yet; none without a card.
[[nodiscard]] std::vector<Demand> demands(const Bench& bench);

}  // namespace bathside
