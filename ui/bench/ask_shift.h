#pragma once

// What is asked about the shift, the people and the bath: who, a reading, the next pull, a note, a
// cane.

#include "ui/bench/bench_context.h"

namespace bathside::ui {

void askWhoOpens(BenchContext& context);
void askDuty(BenchContext& context);
void askReading(BenchContext& context);
void askNextPull(BenchContext& context);
void askNote(BenchContext& context);
void askCane(BenchContext& context);
void askWaterChanged(BenchContext& context);
void askCloseShift(BenchContext& context);

/// What has to be explained, the oldest first; nothing when there is nothing.
void askQuestion(BenchContext& context);

/// The next instant at which the local clock of `zone` shows that time; none: it is no time.
[[nodiscard]] std::optional<WallTime> nextAt(WallTime now, qint64 hhmm, const std::string& zone);

}  // namespace bathside::ui
