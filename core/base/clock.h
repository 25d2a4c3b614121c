#pragma once

// Where "now" comes from. The core never asks the system for the time.

#include "core/base/time.h"

namespace bathside {

class Clock {
public:
    Clock() = default;
    Clock(const Clock&) = delete;
    Clock& operator=(const Clock&) = delete;
    virtual ~Clock() = default;

    /// Both clocks read together. Callable from any thread.
    [[nodiscard]] virtual Stamp now() const = 0;
};

}  // namespace bathside
