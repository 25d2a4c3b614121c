#pragma once

// Everything else that can be said or opened from an idle bench, two taps away at most.

#include "ui/bench/bench_context.h"

namespace bathside::ui {

void askMore(BenchContext& context);

}  // namespace bathside::ui
