#pragma once

// Whether the kernel holds its wall clock to be synchronised, and how far off it says it is.
//
// Source: adjtimex(2): the clock is not synchronised when STA_UNSYNC is set or the call gives
// TIME_ERROR; `offset` is in ns with STA_NANO and in µs without. Asks, never adjusts.

#include "core/base/time.h"

struct timex;

namespace bathside::app {

struct ClockSync {
    bool synchronised = false;
    Micros offset{};  // still to be made up by slewing, as the kernel sees it
};

[[nodiscard]] ClockSync readClockSync();

/// What `adjtimex` said: `result` is its return value (below 0: it failed), `kernel` what it filled
/// in.
[[nodiscard]] ClockSync judgeClockSync(int result, const timex& kernel);

}  // namespace bathside::app
