#pragma once

// The plan as the command line gives it out: one JSON object, times as of `day_time.h`.
//
// (Spec: command line, plan.) Bags and preparers are counted from 1. Beyond the spec: a line that
// could not be decided has "doses_at_least"; a bag that is there already has "made" ("open" or
// "mixed") instead of "pull_start" and "mixed_by"; the bench names the bag that it cannot meet in
// "cannot_meet"; "totals" has "bags_by_size".

#include <functional>
#include <string>

#include "core/plan/plan.h"

namespace bathside::plan {

/// The sentences are the caller's: core has none.
struct PlanWords {
    std::function<std::string(const std::vector<Reason>&)> why;
    std::function<std::string(const Warning&)> warning;
};

/// One object in one line.
[[nodiscard]] std::string toJson(const DayInput& input, const Plan& plan, const PlanWords& words);

}  // namespace bathside::plan
