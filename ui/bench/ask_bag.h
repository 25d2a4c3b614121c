#pragma once

// What is asked about bags: a new one, and everything that can be said of one there is.

#include "ui/bench/bench_context.h"

namespace bathside::ui {

void askNewBag(BenchContext& context);
/// Everything that would be taken now of that bag, one tap each or one question more.
void askBag(BenchContext& context, const BagId& bag);
void askWhereHung(BenchContext& context, const BagId& bag);
/// Which of the bags that are not down, then as `askBag`.
void askWhichBag(BenchContext& context);

}  // namespace bathside::ui
