#pragma once

// What is still to be done of the day, as the planner takes it: from the bench, the stores, the
// card and the plan of each line.
//
// Birds done and the volume left in a bag are reckoned on from the last count. A bag that hangs
// serves first; mixed ones and the one being made up go to the line that runs out first; held ones
// serve nobody. Where the stores keep no diluent or no ampoules of a component, as many as are
// needed of the card's sizes are taken to be there. (Spec: planning, planning again.)

#include <optional>
#include <vector>

#include "core/bench/bench.h"
#include "core/day/flow_of_line.h"
#include "core/plan/input.h"

namespace bathside {

struct LineToday {
    LinePlanned planned;
    LineFlow flow;
    std::optional<BagId> openBag;  // that hangs on it
    std::vector<BagId> mixedBags;  // that are there for it, in the order in which they serve
};

struct DayToday {
    plan::DayInput input;
    std::vector<LineToday> lines;  // as in `input`
};

/// None: no shift is open, no card is in force or no line is planned.
[[nodiscard]] std::optional<DayToday> dayToday(const Bench& bench, const DayClock& clock,
                                               const Stamp& now);

/// The lot's name where the stores keep none of that component.
inline constexpr std::string_view kAnyLot = "";

}  // namespace bathside
