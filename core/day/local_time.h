#pragma once

// Times of the site's day as people say them, and the instants they are.
//
// A plan counts from local midnight in elapsed time, as the wall clock of a day without a change of
// clocks does. Where clocks change, 07:00 is 6 or 8 hours after midnight: both directions go by
// the tz database behind the port. (Spec: planning, units; the trail, local days.)

#include <chrono>
#include <optional>
#include <string>

#include "core/base/local_days.h"
#include "core/base/time.h"

namespace bathside {

class DayClock {
public:
    /// None: no such zone, or no such day in it.
    [[nodiscard]] static std::optional<DayClock> of(const LocalDays& days, const std::string& zone,
                                                    std::chrono::sys_days day);

    [[nodiscard]] std::chrono::sys_days day() const noexcept { return m_day; }
    [[nodiscard]] WallTime midnight() const noexcept { return m_midnight; }
    /// Elapsed since midnight when the clock on the wall shows `shown` (beyond 24 h: the days
    /// after). A time that the change of clocks leaves out counts as if they had not changed yet.
    [[nodiscard]] Millis elapsedAt(Millis shown) const;
    [[nodiscard]] Millis elapsedAt(WallTime at) const { return at - m_midnight; }
    [[nodiscard]] WallTime instant(Millis elapsed) const { return m_midnight + elapsed; }

private:
    DayClock() = default;

    const LocalDays* m_days = nullptr;
    std::string m_zone;
    std::chrono::sys_days m_day;
    WallTime m_midnight{};
};

}  // namespace bathside
