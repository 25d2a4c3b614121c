#pragma once

// `bathside-cli reading FILE`: corrected value, uncertainty and verdict of one reading.

#include <string>

#include "app/cli/document_verb.h"

namespace bathside::cli {

/// Exit `No` for a reading outside; inside and undecided are `Done`.
[[nodiscard]] Exit readingVerb(const std::string& file, Answer answer, Terminal& terminal);

void addReading(CLI::App& app, Call& call);

}  // namespace bathside::cli
