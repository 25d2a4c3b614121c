#pragma once

// A delivery's file as the bench takes it: read against its stores and its card, and said at once.

#include <string_view>

#include "core/bench/bench.h"
#include "core/bench/intent.h"
#include "core/stores/intake.h"

namespace bathside {

/// What of the file could be taken now; without a card any component will do.
[[nodiscard]] Intake intakeFor(const Bench& bench, std::string_view csv);

/// All that can be taken, as one statement.
[[nodiscard]] Receive deliveryOf(const Intake& intake);

}  // namespace bathside
