#pragma once

// The state folded from a trail: cards and probes before a shift, and everything since it opened.

#include <span>

#include "core/station/station.h"
#include "core/trail/store/continuation.h"

namespace bathside::store {

/// As the trail stands. `StoreFault::Newer` where an event is of a kind not known here.
[[nodiscard]] Result<State, StoreTrouble> stateOf(const TrailDb& trail);

/// As it stood after event `last`, the shift that began with event `opening` being the last before.
[[nodiscard]] Result<State, StoreTrouble> stateOf(const TrailDb& trail, Seq opening, Seq last);

/// As a trail of several files stands: those before `trail`, and it.
[[nodiscard]] Result<State, StoreTrouble> stateOf(const TrailDb& trail,
                                                  std::span<const SoundPart> earlier);

/// As it stood where the last of `parts` is still sound.
[[nodiscard]] Result<State, StoreTrouble> stateOf(std::span<const SoundPart> parts);

}  // namespace bathside::store
