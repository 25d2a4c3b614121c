#pragma once

// The kernel's clocks, one reading at a time, behind a function so that tests can bring their own.
//
// Source: clock_gettime(2). Boot counts through suspend and is never set; Monotonic is the same
// without the time asleep; Wall is UTC and can jump.

#include <cstdint>
#include <functional>

#include "core/base/time.h"

namespace bathside::app {

enum class KernelClock : std::uint8_t { Boot, Monotonic, Wall };

/// Time since the clock's own origin, cut to whole microseconds. Callable from any thread.
using ReadClock = std::function<Micros(KernelClock)>;

[[nodiscard]] Micros readKernelClock(KernelClock clock);

/// All three as of one instant.
struct ClockReading {
    Micros boot{};
    Micros monotonic{};
    Micros wall{};
};

/// Reads the boot clock before and after the others and keeps the tightest of a few tries, so that
/// being put aside by the scheduler in between does not tear the reading apart.
[[nodiscard]] ClockReading readTogether(const ReadClock& read);

}  // namespace bathside::app
