#pragma once

// The deviations of a shift as they stand in its record: each limit passed once, with what later
// corrections made of it.

#include <optional>
#include <vector>

#include "core/bench/state.h"

namespace bathside {

struct Deviation {
    Seq seq = 0;  // where it was written first
    WallTime at{};
    JudgementKey key;
    std::optional<BagId> bag;
    std::optional<std::int64_t> over;  // in the limit's unit; none: the limit was kept after all
    bool rejudged = false;
};

/// In the order they were written.
[[nodiscard]] std::vector<Deviation> deviationsOf(const State& state);

}  // namespace bathside
