#pragma once

// The state folded from a trail: cards and probes before a shift, and everything since it opened.

#include "core/station/station.h"
#include "core/trail/store/trail_db.h"

namespace bathside::store {

/// As the trail stands. `StoreFault::Newer` where an event is of a kind not known here.
[[nodiscard]] Result<State, StoreTrouble> stateOf(const TrailDb& trail);

/// As it stood after event `last`, the shift that began with event `opening` being the last before.
[[nodiscard]] Result<State, StoreTrouble> stateOf(const TrailDb& trail, Seq opening, Seq last);

}  // namespace bathside::store
