#pragma once

// What the card says of live cells, and why a bag shows none: the card side of the band that stands
// in a bag's own pane (ui/bench/ask_cells.h).

#include "ui/bench/bench_context.h"

namespace bathside::ui {

/// "off", "on", or that something is missing.
[[nodiscard]] QString liveCellsLine(const Bench& bench);
/// Every part with its value, or that it is missing; a tap on a part shows its source.
void askLiveCells(BenchContext& context, const std::function<void()>& back);

}  // namespace bathside::ui
