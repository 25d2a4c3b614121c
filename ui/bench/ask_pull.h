#pragma once

// What is asked about the ampoules of the next pull, before they leave the cryogen.

#include "ui/bench/bench_context.h"

namespace bathside::ui {

/// One more ampoule for the draft: a tap on a component and lot adds one.
void askAmpoule(BenchContext& context);
/// The lot of the draft's ampoule with that index.
void askLot(BenchContext& context, std::size_t index);

}  // namespace bathside::ui
