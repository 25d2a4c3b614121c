#pragma once

// Small days of every kind, the same for the same seed: odd rates, breaks that overlap, touch or
// are empty, stores that bite or do not.

#include "core/plan/input.h"

namespace bathside::plan::test {

/// Few enough bags a line for `enumerated`.
[[nodiscard]] DayInput randomDay(unsigned seed);

/// The same in the middle of the day: birds done, an open bag, mixed ones, and a time that it is.
[[nodiscard]] DayInput randomMiddleOfDay(unsigned seed);

}  // namespace bathside::plan::test
