#pragma once

// `bathside-cli archive TRAIL --year YYYY --to FILE`: a closed year as a file of its own. (D23)
//
// A trail file with that year's events, from the first of its local days to its last, that begins
// where the year before ended and verifies from there. The trail itself keeps everything.

#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct ArchiveOrder {
    std::string trail;
    int year = 0;
    std::string file;
    std::string key;  // the file of the station's key, to seal the archive with; empty: not sealed
    bool json = false;
};

/// What a sealed archive has beside it: `<file>.seal`, the head signed as in `day.sealed`.
inline constexpr std::string_view kSealEnding = ".seal";

/// Exit `No` when there is nothing of that year, it is not over, or the trail is not sound.
[[nodiscard]] Exit archiveVerb(const ArchiveOrder& order, Terminal& terminal);

void addArchive(CLI::App& app, Call& call);

}  // namespace bathside::cli
