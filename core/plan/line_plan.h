#pragma once

// One line of the day: its best plan from what the lines before it left in stores, or why there is
// none. (Spec: planning, rules 5, 6 and 8.)

#include <vector>

#include "core/base/result.h"
#include "core/plan/line_search.h"
#include "core/plan/reasons.h"

namespace bathside::plan {

struct PlannedBag {
    enum class Made : std::uint8_t { New, Mixed, Open };  // the others are there already
    Made made = Made::New;
    MicroLitres volume;
    Count doses = 0;          // charged for; in a bag that is there, left in it
    std::vector<Draw> draws;  // one a component; none in a bag that is there
    Turn turn;
    DayTime mixedBy{};    // a new bag's
    DayTime pullStart{};  // a new bag's: the bench's start, or as late as can be
    Millis ageAtLast{};   // from the first ampoule in diluent to the last bird
    Millis margin{};      // to the limit
};

struct LinePlan {
    std::vector<PlannedBag> bags;
    Worth worth;
};

/// What can be said of a line before the bench has a schedule: pull starts are as late as can be.
[[nodiscard]] SearchEnd bestFrom(const LineRules& rules, const Stores& stores, const Level& level,
                                 Effort& effort);

/// Takes what the plan uses out of `level`; a line that cannot be done takes nothing.
[[nodiscard]] Result<LinePlan, std::vector<Reason>> planLine(const DayInput& input,
                                                             const Line& line, const Stores& stores,
                                                             Level& level, Effort& effort);

}  // namespace bathside::plan
