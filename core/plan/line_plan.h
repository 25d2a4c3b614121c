#pragma once

// One line of the day: its best plan from what the lines before it left in stores. (Spec: planning,
// rules 5 and 6.)

#include <vector>

#include "core/base/result.h"
#include "core/plan/line_search.h"

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

/// The best plan from that level on, as the search tells it.
[[nodiscard]] SearchEnd bestFrom(const LineRules& rules, const Stores& stores, const Level& level,
                                 Effort& effort);

/// Takes what the plan uses out of `level`. Pull starts are as late as can be, until the bench has
/// a schedule. Fails, and takes nothing, with how the search ended.
[[nodiscard]] Result<LinePlan, SearchEnd> planLine(const DayInput& input, const Line& line,
                                                   const Stores& stores, Level& level,
                                                   Effort& effort);

}  // namespace bathside::plan
