#pragma once

// The day's plan: every line's bags, the bench's schedule, what they use, what to look at.
//
// Pure: the same input and effort give the same plan. Every line that has a plan has the best one
// there is; what could not be proven is a reason (`Undecided`), never a plan. (Spec: planning.)

#include <optional>
#include <vector>

#include "core/plan/line_plan.h"
#include "core/plan/reasons.h"

namespace bathside::plan {

struct ScheduledBag {
    BagPlace place;
    std::size_t preparer = 0;  // counted from 0
    DayTime start{};
    DayTime mixed{};
    friend bool operator==(const ScheduledBag&, const ScheduledBag&) = default;
};

struct BenchPlan {
    std::vector<ScheduledBag> schedule;  // in order of time; empty where there is none
    std::optional<BagPlace> cannotMeet;  // a bag that is late whatever is done
    std::size_t preparersNeeded = 1;     // the fewest that would do
    /// Where the bench cannot meet all: the smallest slack, in whole minutes, with which it could
    /// without opening a dose more; none: there is none, or it could not be proven.
    std::optional<std::chrono::minutes> slackNeeded;
};

struct LotUse {
    std::size_t component = 0;
    std::size_t lot = 0;
    Count ampoules = 0;
    friend bool operator==(const LotUse&, const LotUse&) = default;
};

struct SizeUse {
    MicroLitres volume;
    Count bags = 0;
    friend bool operator==(const SizeUse&, const SizeUse&) = default;
};

struct Totals {
    Count dosesOpened = 0;  // all components
    Count dosesDiscarded = 0;
    Count birds = 0;  // of new bags and of those that are there already
    Count bags = 0;   // new ones
    std::vector<SizeUse> sizes;
    std::vector<LotUse> ampoules;
};

using PlannedLines = std::vector<Result<LinePlan, std::vector<Reason>>>;

struct Plan {
    PlannedLines lines;  // as in the input
    BenchPlan bench;
    Totals totals;
    std::vector<Warning> warnings;

    /// All lines and the bench.
    [[nodiscard]] bool isFeasible() const;
};

[[nodiscard]] Plan planDay(const DayInput& input, Effort effort);

}  // namespace bathside::plan
