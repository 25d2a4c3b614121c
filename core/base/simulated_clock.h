#pragma once

// A clock that stands still until it is told otherwise: for replay, rehearsal and tests.

#include "core/base/clock.h"

namespace bathside {

class SimulatedClock final : public Clock {
public:
    /// Up since an hour, at that wall time.
    explicit SimulatedClock(WallTime start)
        : m_now{.wall = start, .boot = std::chrono::hours(1), .bootId = BootId{1}}
    {
    }

    [[nodiscard]] Stamp now() const override { return m_now; }

    /// Both clocks run on to that instant of the boot clock; never back.
    void runTo(BootTime boot)
    {
        if (boot > m_now.boot)
            m_now = shifted(m_now, boot - m_now.boot);
    }

    /// Both clocks run on by as much as the wall clock lacks to `wall`; never back.
    void runTo(WallTime wall)
    {
        if (wall > m_now.wall)
            runTo(m_now.boot + (wall - m_now.wall));
    }

    /// The machine was off until `wall` and has just been started: the boot clock is new.
    void restart(WallTime wall)
    {
        ++m_now.bootId[0];
        m_now = {.wall = wall, .boot = std::chrono::seconds(20), .bootId = m_now.bootId};
    }

    /// Somebody set the wall clock.
    void stepWall(Millis by) { m_now.wall += by; }

private:
    Stamp m_now;
};

}  // namespace bathside
