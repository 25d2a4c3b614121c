#pragma once

// The plan's times, which count elapsed time from local midnight, as the clock on the wall shows
// them: "07:49", past midnight "24:10". Where clocks change during the day, the two differ.
// (tz database, through Qt.)

#include <QString>
#include <string>

#include "core/day/day_plan.h"

namespace bathside::ui {

class PlanClock {
public:
    PlanClock(WallTime midnight, std::string zone) : m_midnight(midnight), m_zone(std::move(zone))
    {
    }

    /// What the clock shows, since the day's midnight.
    [[nodiscard]] Millis shown(plan::DayTime elapsed) const;
    /// The minute that has begun.
    [[nodiscard]] QString text(plan::DayTime elapsed) const;
    [[nodiscard]] QString text(WallTime at) const { return text(at - m_midnight); }
    [[nodiscard]] plan::DayTime elapsed(WallTime at) const { return at - m_midnight; }
    [[nodiscard]] const std::string& zone() const noexcept { return m_zone; }

private:
    WallTime m_midnight;
    std::string m_zone;
};

}  // namespace bathside::ui
