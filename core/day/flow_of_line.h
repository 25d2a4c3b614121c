#pragma once

// How fast a line runs, from the running totals on record, and where it stands now.
//
// Time in which the line stood still (stopped, or in a break of its plan) does not count. Until a
// line has run for ten minutes on record, its planned rate holds. Birds since the last count are
// reckoned at the rate. (Spec: checks, flow of the day.)

#include <optional>

#include "core/bench/bench.h"
#include "core/checks/flow.h"
#include "core/day/local_time.h"
#include "core/plan/line_clock.h"

namespace bathside {

struct LineFlow {
    std::optional<Flow> measured;       // birds an hour, with its 95 % interval
    std::int64_t ratePerHour = 0;       // that the plan goes by: measured, else planned
    std::int64_t birdsNow = 0;          // running total, reckoned on from the last count
    std::optional<WallTime> countedAt;  // the last count
};

/// The line's planned breaks as spans of elapsed time from midnight.
[[nodiscard]] std::vector<plan::Break> breaksOf(const LinePlanned& planned, const DayClock& clock);

[[nodiscard]] LineFlow flowOf(const Bench& bench, const LinePlanned& planned, const DayClock& clock,
                              WallTime now);

}  // namespace bathside
