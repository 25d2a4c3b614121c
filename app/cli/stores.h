#pragma once

// `bathside-cli stores --trail FILE`: what the stores hold after a shift, and how it reckons up.

#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct StoresOrder {
    std::string trail;
    std::string day;  // YYYY-MM-DD: its last shift; empty: the trail's last
    bool json = false;
};

/// Exit `No` where something does not add up, or no shift was opened on that day.
[[nodiscard]] Exit storesVerb(const StoresOrder& order, Terminal& terminal);

void addStores(CLI::App& app, Call& call);

}  // namespace bathside::cli
