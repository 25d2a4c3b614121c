#pragma once

// `bathside-cli export`: the record of a local day or a range, as files.

#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct ExportCall {
    std::string trail;
    std::string day;    // YYYY-MM-DD
    std::string until;  // empty: that day alone
    std::string folder;
    std::string as = "csv,jsonl";
    std::string key;  // file of the key that signs the manifest; empty: seal.key beside the trail
    bool json = false;
};

/// Exit `No` when the trail has nothing of these days.
[[nodiscard]] Exit exportVerb(const ExportCall& order, Terminal& terminal);

void addExport(CLI::App& app, Call& call);

}  // namespace bathside::cli
