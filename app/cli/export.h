#pragma once

// `bathside-cli export`: the record of a local day or a range, as files.

#include <string>
#include <vector>

#include "app/cli/sheet_drawing.h"
#include "app/cli/verb.h"

namespace bathside::cli {

struct ExportCall {
    std::string trail;
    std::string day;    // YYYY-MM-DD
    std::string until;  // empty: that day alone
    std::string folder;
    std::string as = "csv,jsonl";
    std::vector<std::string> continues{};  // what the trail goes on from, oldest first
    std::string paper = "a4";
    std::string language = "en";
    std::string key;  // file of the key that signs the manifest; empty: seal.key beside the trail
    bool json = false;
};

/// Exit `No` when the trail has nothing of these days. Without a drawing, `pdf` is unusable.
[[nodiscard]] Exit exportVerb(const ExportCall& order, Terminal& terminal,
                              const SheetDrawing& drawing = {});

void addExport(CLI::App& app, Call& call, const SheetDrawing& drawing = {});

}  // namespace bathside::cli
