#pragma once

// `bathside-cli plan FILE`: the day's bags, line by line, and the bench's schedule.

#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct PlanOrder {
    std::string file;
    bool json = false;
};

/// Exit `No` when a line or the bench cannot be done.
[[nodiscard]] Exit planVerb(const PlanOrder& order, Terminal& terminal);

void addPlan(CLI::App& app, Call& call);

}  // namespace bathside::cli
