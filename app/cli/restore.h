#pragma once

// `bathside-cli restore COPY --to TRAIL`: a copy becomes the station's trail again.
//
// Only a sound copy, and only where no trail is: nothing is overwritten. The key and the PINs
// beside it are not touched.

#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct RestoreOrder {
    std::string copy;
    std::string trail;
    bool json = false;
};

/// Exit `No` when the copy is not sound; then nothing is written.
[[nodiscard]] Exit restoreVerb(const RestoreOrder& order, Terminal& terminal);

void addRestore(CLI::App& app, Call& call);

}  // namespace bathside::cli
