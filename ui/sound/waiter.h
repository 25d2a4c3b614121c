#pragma once

// Sleeps until an instant of the boot clock, a poke, or a step of wall time: never wakes before the
// instant.
//
// `timerfd` on CLOCK_BOOTTIME with absolute instants counts through suspend (timerfd_create(2)); a
// second one on CLOCK_REALTIME with TFD_TIMER_CANCEL_ON_SET tells when wall time is set. `poke` may
// be called from any thread and any number of times; `wait` from one.

#include <optional>

#include "core/base/time.h"

namespace bathside::ui {

/// CLOCK_BOOTTIME of this machine, rounded down.
[[nodiscard]] BootTime bootNow();

class Waiter {
public:
    struct Woken {
        bool isPoked = false;
        bool isWallSet = false;
    };

    Waiter();
    Waiter(const Waiter&) = delete;
    Waiter& operator=(const Waiter&) = delete;
    ~Waiter();

    void poke();
    /// Returns at `until` or later, or as soon as it is poked or wall time is set.
    Woken wait(BootTime until);

private:
    void arm(BootTime until);
    void watchWall();

    int m_timer = -1;
    int m_poke = -1;
    int m_wall = -1;
};

}  // namespace bathside::ui
