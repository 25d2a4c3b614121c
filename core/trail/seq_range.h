#pragma once

// Entries first … last without a gap, and several such runs.

#include <vector>

#include "core/base/ids.h"

namespace bathside {

struct SeqRange {
    Seq first = 0;
    Seq last = 0;
    friend bool operator==(const SeqRange&, const SeqRange&) = default;
};

/// The same entries in order, with neighbours and what overlaps as one.
[[nodiscard]] std::vector<SeqRange> joined(std::vector<SeqRange> runs);

[[nodiscard]] bool contain(const std::vector<SeqRange>& runs, Seq seq);

}  // namespace bathside
