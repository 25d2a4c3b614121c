#pragma once

// A bag's live cells as its own pane shows them: a band against the minimum, indicative. Nothing
// where the card has it off, or a rate, its source or a titre is missing.

#include <optional>

#include "ui/bench/bench_context.h"

namespace bathside::ui {

/// The bag's tile for it; none: nothing is shown of it.
[[nodiscard]] std::optional<Choice> cellsChoice(const BenchContext& context, const Bag& bag);
/// The band in words, and over the bag's life.
void lookAtCells(BenchContext& context, const BagId& bag);

}  // namespace bathside::ui
