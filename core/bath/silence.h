#pragma once

// Whether a live thermometer has fallen silent though its port is still there: switched off, its
// cable cut, its driver stuck.
//
// Silent is what has said nothing for `kMissed` of its usual intervals (the median of those in what
// it said), `kShortestSilence` at least; `kUnknownSilence` where it spoke at most once, so that a
// slow one is given its time. Instants on the boot clock. Pure. (Spec: temperatures, reading.)

#include <span>

#include "core/bath/source.h"

namespace bathside {

inline constexpr int kMissed = 5;
inline constexpr Millis kShortestSilence{10'000};
inline constexpr Millis kUnknownSilence{60'000};

/// `said` oldest first, `since` when it began to be listened to. Never of one whose last word was a
/// fault: that has been told.
[[nodiscard]] bool isSilent(std::span<const RawReading> said, const Stamp& since, const Stamp& now);

}  // namespace bathside
