#pragma once

// The state of the station: the bench, and this shift's events as they stand after corrections.
//
// A correction or a take-back changes no event in the trail; it changes the journal, and the bench
// is folded anew from the shift's opening. So there is one way to reach any state: the fold.

#include <memory>
#include <vector>

#include "core/bench/bench.h"

namespace bathside {

struct State {
    Bench bench;
    Bench opening;  // the bench at the journal's beginning
    std::vector<std::shared_ptr<const Event>>
        journal;  // since the shift opened, as amended, in order
};

/// The state after one more event. May not refuse: an event that amends nothing it knows changes
/// nothing.
[[nodiscard]] State evolve(State state, const Event& event);

/// The event of the journal with that seq, as amended; null when it is not there or was taken back.
[[nodiscard]] const Event* eventAt(const State& state, Seq seq);

}  // namespace bathside
