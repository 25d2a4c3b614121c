#pragma once

// `bathside-cli scan TEXT`: what a scanned code says.

#include <chrono>
#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct ScanCall {
    std::string text;         // as the scanner sends it; "-": standard input, without its line end
    std::chrono::year now{};  // decides the century of two-digit years
    bool json = false;
};

/// Exit `Done` when it was understood, plain text included; `No` when it is a code and wrong in
/// itself (a check digit, a date, a length …); `Unusable` when there is nothing to read, or too
/// much.
[[nodiscard]] Exit scanVerb(const ScanCall& order, Terminal& terminal);

void addScan(CLI::App& app, Call& call);

}  // namespace bathside::cli
