#include "core/day/local_time.h"

namespace bathside {

std::optional<DayClock> DayClock::of(const LocalDays& days, const std::string& zone,
                                     std::chrono::sys_days day)
{
    const auto found = days.day(zone, std::chrono::year_month_day(day));
    if (!found)
        return std::nullopt;
    DayClock clock;
    clock.m_days = &days;
    clock.m_zone = zone;
    clock.m_day = day;
    clock.m_midnight = found->start;
    return clock;
}

// The offset in force then is the one that gives that time of day back; before a change and after
// it there is only one.
Millis DayClock::elapsedAt(Millis shown) const
{
    const WallTime asUtc = WallTime(m_day.time_since_epoch()) + shown;
    const auto before = m_days->offset(m_zone, m_midnight).value_or(std::chrono::seconds{});
    const WallTime guess = asUtc - before;
    const auto then = m_days->offset(m_zone, guess).value_or(before);
    const WallTime better = asUtc - then;
    const bool holds = m_days->offset(m_zone, better).value_or(then) == then;
    return (holds ? better : guess) - m_midnight;
}

}  // namespace bathside
