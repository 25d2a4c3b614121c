#pragma once

// The day's plan in whole sentences: why a line cannot be done and what would help, what to look
// at, how the day goes. No default: a new reason does not compile without words.

#include <QString>

#include "core/day/day_plan.h"
#include "ui/text/plan_clock.h"

namespace bathside::ui {

/// A bag that is there by its own name, "B4"; one that is still to be made by its line and its
/// number among those, "A-2".
[[nodiscard]] QString bagText(const DayPlan& day, const plan::BagPlace& place);
/// "4 min", cut off: a margin is never shown larger than it is.
[[nodiscard]] QString marginText(Millis margin);

[[nodiscard]] QString reasonText(const plan::DayInput& input, const plan::Reason& reason);
[[nodiscard]] QString warningText(const DayPlan& day, const plan::Warning& warning,
                                  const PlanClock& clock);
[[nodiscard]] QString remarkText(const DayRemark& remark, const PlanClock& clock);
/// Which bag the bench cannot meet, and what would do.
[[nodiscard]] QString benchText(const DayPlan& day);
/// Which pull is next and when, and that it is too early for it.
[[nodiscard]] QString nextText(const NextBag& next, const PlanClock& clock, plan::DayTime now);
/// "3,120 birds an hour measured, 2,980 to 3,260 with 95 % confidence; planned 3,000."
[[nodiscard]] QString rateText(const LineToday& line);
[[nodiscard]] QString forecastText(const BagForecast& forecast, const PlanClock& clock);

}  // namespace bathside::ui
