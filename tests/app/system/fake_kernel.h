#pragma once

// Kernel clocks for tests: they move only when told, and can be interrupted between two readings.

#include <deque>

#include "app/system/kernel_clock.h"

namespace bathside::app::test {

class FakeKernel {
public:
    ClockReading at;               // what the clocks say now
    std::deque<Micros> interrupt;  // how long each of the next readings takes; none left: no time

    [[nodiscard]] ReadClock reader()
    {
        return [this](KernelClock clock) { return read(clock); };
    }

    void pass(Micros time)
    {
        at.monotonic += time;
        suspend(time);
    }

    void suspend(Micros time)
    {
        at.boot += time;
        at.wall += time;
    }

private:
    Micros read(KernelClock clock)
    {
        ++readings;
        if (!interrupt.empty()) {
            pass(interrupt.front());
            interrupt.pop_front();
        }
        switch (clock) {
            case KernelClock::Boot:
                return at.boot;
            case KernelClock::Monotonic:
                return at.monotonic;
            case KernelClock::Wall:
                return at.wall;
        }
        return {};
    }

public:
    int readings = 0;
};

}  // namespace bathside::app::test
