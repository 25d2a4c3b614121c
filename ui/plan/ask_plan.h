#pragma once

// What is asked about the plan: which line, its birds, birds an hour, start and breaks. A new line
// is asked for all of them in turn; each change of one is one intent, and the plan is there at
// once.

#include "ui/bench/bench_context.h"

namespace bathside::ui {

/// The lines that are planned, and a new one.
void askPlannedLine(BenchContext& context);

/// A time of day as its digits are typed: 730 is 07:30. None: there is no such minute.
[[nodiscard]] std::optional<Millis> timeOfDigits(qint64 digits);

}  // namespace bathside::ui
