#pragma once

// The last things that were said at the bench, each with whether it is recorded or only taken.
//
// One entry a tap, newest first; the program's own facts are left out. Read from the journal, so
// what was taken back is gone and what was corrected reads as corrected.

#include <vector>

#include "core/bench/state.h"

namespace bathside::ui {

struct Said {
    std::vector<Seq> seqs;
    std::vector<Fact> facts;
    Stamp at;
    bool recorded = false;
};

/// `recorded`: the last seq that is durable.
[[nodiscard]] std::vector<Said> lastSaid(const State& state, Seq recorded, std::size_t most);

}  // namespace bathside::ui
