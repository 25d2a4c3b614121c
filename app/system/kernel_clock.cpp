#include "app/system/kernel_clock.h"

#include <time.h>

namespace bathside::app {
namespace {

// Three readings take well under a microsecond; more than this between them was an interruption.
constexpr Micros kTightEnough{20};
constexpr int kTries = 8;

clockid_t idOf(KernelClock clock)
{
    switch (clock) {
        case KernelClock::Boot:
            return CLOCK_BOOTTIME;
        case KernelClock::Monotonic:
            return CLOCK_MONOTONIC;
        case KernelClock::Wall:
            return CLOCK_REALTIME;
    }
    return CLOCK_BOOTTIME;
}

}  // namespace

Micros readKernelClock(KernelClock clock)
{
    timespec at{};
    clock_gettime(idOf(clock), &at);  // cannot fail for these clocks on Linux 2.6.39 and later
    return std::chrono::floor<Micros>(std::chrono::seconds(at.tv_sec) +
                                      std::chrono::nanoseconds(at.tv_nsec));
}

ClockReading readTogether(const ReadClock& read)
{
    ClockReading best;
    Micros bestGap = Micros::max();
    for (int tries = 0; tries < kTries && bestGap > kTightEnough; ++tries) {
        const Micros before = read(KernelClock::Boot);
        const Micros monotonic = read(KernelClock::Monotonic);
        const Micros wall = read(KernelClock::Wall);
        const Micros gap = read(KernelClock::Boot) - before;
        if (gap < bestGap) {
            best = {.boot = before + gap / 2, .monotonic = monotonic, .wall = wall};
            bestGap = gap;
        }
    }
    return best;
}

}  // namespace bathside::app
