#pragma once

// A line's best plan by trying every sequence of bags and both turns of each, written straight from
// the rules and sharing no code with the planner: the peer that the search is compared with.

#include <optional>
#include <vector>

#include "core/plan/input.h"

namespace bathside::plan::test {

struct TriedBag {
    std::int64_t volume = 0;  // µL
    std::int64_t first = 0;   // ms
    std::int64_t last = 0;    // ms
    std::int64_t birds = 0;
    std::vector<std::size_t>
        lots;  // by component, in order of its input; none: it is there already
    friend bool operator==(const TriedBag&, const TriedBag&) = default;
};

struct TriedPlan {
    std::int64_t doses = 0;
    std::int64_t volume = 0;  // µL
    std::int64_t finish = 0;  // ms
    std::vector<TriedBag> bags;
};

/// What has been used by earlier lines.
struct Used {
    std::vector<std::int64_t> bags;               // as in the input
    std::vector<std::vector<std::int64_t>> lots;  // as in the input
};

[[nodiscard]] Used nothingUsed(const DayInput& input);

/// None: no sequence does it. Takes what the plan uses.
[[nodiscard]] std::optional<TriedPlan> enumerated(const DayInput& input, const Line& line,
                                                  Used& used);

}  // namespace bathside::plan::test
