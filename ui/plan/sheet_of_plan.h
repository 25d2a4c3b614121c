#pragma once

// The day's plan as it is printed: the bags that are still to be made, line by line.

#include "ui/print/plan_sheet.h"
#include "ui/text/plan_clock.h"

namespace bathside::ui {

struct SheetHead {
    std::string site;
    WallTime made{};
    bool rehearsal = false;
};

/// Lines that cannot be done stand without bags.
[[nodiscard]] PlanSheet planSheetFrom(const DayPlan& day, const PlanClock& clock,
                                      const SheetHead& head);

}  // namespace bathside::ui
