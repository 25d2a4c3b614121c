#pragma once

// Mending: take back with a reason, and the correction of one thing that was said.

#include "ui/bench/bench_context.h"

namespace bathside::ui {

/// Takes the last tap back; asks for the reason where one is needed.
void takeBack(BenchContext& context, const AnswerTap& tap);
/// Which of the last things said, which field of it, its true value, and why.
void askCorrection(BenchContext& context);

}  // namespace bathside::ui
