#pragma once

// Local days from the system's tz database, through QTimeZone.
//
// A day begins at the first instant that has its date. Found by search over whole minutes of local
// time, so that zones whose clocks change at midnight, by half an hour or by a whole day come out
// right. Any thread.

#include "core/base/local_days.h"

namespace bathside::store {

class ZoneDays final : public LocalDays {
public:
    [[nodiscard]] std::optional<LocalDay> day(std::string_view zone,
                                              std::chrono::year_month_day date) const override;
    [[nodiscard]] std::optional<std::chrono::seconds> offset(std::string_view zone,
                                                             WallTime at) const override;
};

}  // namespace bathside::store
