#pragma once

// When each bag is made: equal times, each within its window, by one or more preparers.
//
// A schedule is found whenever one exists, and it is as late as can be: the k-th start is the
// latest for every k at once. Seen backwards in time this is the earliest schedule for equal
// processing times, release times and deadlines; it is found by barriers (Simons, SIAM J. Comput.
// 12(2), 1983; for one machine Garey, Johnson, Simons and Tarjan, SIAM J. Comput. 10(2), 1981).

#include <cstddef>
#include <vector>

#include "core/base/result.h"
#include "core/plan/input.h"

namespace bathside::plan {

/// When making one bag may start; both ends belong to it.
struct StartWindow {
    DayTime earliest{};
    DayTime latest{};
};

struct BenchSlot {
    std::size_t bag = 0;  // which window
    std::size_t preparer = 0;
    DayTime start{};
    friend bool operator==(const BenchSlot&, const BenchSlot&) = default;
};

/// One slot a window, in order of time. Ties between windows that end together go to the one that
/// stands first. Fails with the window of a bag that cannot be met.
[[nodiscard]] Result<std::vector<BenchSlot>, std::size_t> latestSchedule(
    const std::vector<StartWindow>& windows, Millis prepareTime, std::size_t preparers);

/// The smallest number of preparers that would do; every window must hold a start.
[[nodiscard]] std::size_t preparersNeeded(const std::vector<StartWindow>& windows,
                                          Millis prepareTime);

}  // namespace bathside::plan
