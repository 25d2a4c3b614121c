#pragma once

// What is asked about a line: birds, needle, stopped or going, the dose.

#include "ui/bench/bench_context.h"

namespace bathside::ui {

void askLine(BenchContext& context, const LineId& line);
/// Which line, or a new one, then as `askLine`.
void askWhichLine(BenchContext& context);

/// "4,120 birds · needle in 380 · stopped": how the line stands.
[[nodiscard]] QString lineText(const Bench& bench, const Line& line);

}  // namespace bathside::ui
