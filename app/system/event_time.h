#pragma once

// When a tap happened: the input event's own time stamp, mapped to the station's clock.
//
// X servers and Wayland compositors stamp events with CLOCK_MONOTONIC in ms (32 bits, which wrap
// after 49.7 days), which runs at the boot clock's rate while the machine is awake. A stamp that
// lies in the future or is older than two seconds (a platform that counts from something else, an
// event made by a program, a queue that stood still, a suspend in between) tells nothing: then the
// tap counts from the instant it was received, and says so. Source: Bathside's rule for the time of
// a tap, DEVELOPERS.md.

#include <cstdint>

#include "app/system/boot_clock.h"

namespace bathside::app {

struct InputInstant {
    Stamp at;
    bool byReceipt = false;  // the event's stamp was not plausible: `at` is when it was received
};

class EventTime {
public:
    static constexpr Millis kOldest{2000};

    explicit EventTime(const BootClock& clock) : m_clock(clock) {}

    /// `eventMs` is QInputEvent::timestamp(); 0 means that there was none. To be called when the
    /// event is received.
    [[nodiscard]] InputInstant instantOf(std::uint64_t eventMs) const;

private:
    const BootClock& m_clock;
};

}  // namespace bathside::app
