#pragma once

// Where a site's days begin and end: the port to the tz database, which the core does not have.
//
// A local day is [local midnight, next local midnight): 23, 24, 24.5 or 25 hours long where clocks
// change. Where midnight itself is skipped, the day begins at its first instant. A zone is an IANA
// name, as the shift's opening event has it. Callable from any thread.

#include <chrono>
#include <optional>
#include <string_view>

#include "core/base/time.h"

namespace bathside {

struct LocalDay {
    WallTime start{};  // its first instant
    WallTime end{};    // the first instant after it
    friend bool operator==(const LocalDay&, const LocalDay&) = default;
};

class LocalDays {
public:
    LocalDays() = default;
    LocalDays(const LocalDays&) = delete;
    LocalDays& operator=(const LocalDays&) = delete;
    virtual ~LocalDays() = default;

    /// None: no such zone, or a date that the zone left out.
    [[nodiscard]] virtual std::optional<LocalDay> day(std::string_view zone,
                                                      std::chrono::year_month_day date) const = 0;

    /// Local time less UTC, as in force at that instant. None: no such zone.
    [[nodiscard]] virtual std::optional<std::chrono::seconds> offset(std::string_view zone,
                                                                     WallTime at) const = 0;
};

}  // namespace bathside
