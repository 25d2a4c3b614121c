#pragma once

// `bathside-cli replay SCRIPT --trail FILE`: a script played through the real service into a real
// trail.

#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct ReplayOrder {
    std::string script;
    std::string trail;
    std::string card;  // empty: the default one
    bool json = false;
};

/// Exit `No` when playing stopped at a line; the trail then has all before it.
[[nodiscard]] Exit replayVerb(const ReplayOrder& order, Terminal& terminal);

void addReplay(CLI::App& app, Call& call);

}  // namespace bathside::cli
