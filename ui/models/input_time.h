#pragma once

// How an input event's own time stamp becomes an instant of the station's clock. Joined in by app:
// app/system maps it on real input; where the clock is stepped by hand it is that clock's now.

#include <cstdint>
#include <functional>

#include "core/base/time.h"

namespace bathside::ui {

struct InputTime {
    Stamp at;
    bool byReceipt = false;  // the event's stamp was not plausible: `at` is when it was received
};

/// `eventMs` is QInputEvent::timestamp(); 0: none. Called while the event is being handled.
using MapInputTime = std::function<InputTime(std::uint64_t eventMs)>;

}  // namespace bathside::ui
