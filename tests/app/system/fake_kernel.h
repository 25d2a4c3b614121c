#pragma once

// Kernel clocks for tests: they move only when told, and can be interrupted between two readings.

#include <deque>

#include "app/system/kernel_clock.h"

namespace bathside::test {

class FakeKernel {
public:
    app::ClockReading at;          // what the clocks say now
    std::deque<Micros> interrupt;  // how long each of the next readings takes; none left: no time

    [[nodiscard]] app::ReadClock reader()
    {
        return [this](app::KernelClock clock) { return read(clock); };
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
    Micros read(app::KernelClock clock)
    {
        ++readings;
        if (!interrupt.empty()) {
            pass(interrupt.front());
            interrupt.pop_front();
        }
        switch (clock) {
            case app::KernelClock::Boot:
                return at.boot;
            case app::KernelClock::Monotonic:
                return at.monotonic;
            case app::KernelClock::Wall:
                return at.wall;
        }
        return {};
    }

public:
    int readings = 0;
};

}  // namespace bathside::test
