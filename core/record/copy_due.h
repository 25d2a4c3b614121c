#pragma once

// When the trail is to be copied, and whether the last copy is older than was set.
//
// Never while a pull is open or the critical window lasts: then it is due as soon as that is over.
// A shift's copy waits a little for its seal, so that the copy has it. Where the clock went back
// over a restart, a copy is due. (Spec: the trail, backups.)

#include "core/bench/bench.h"

namespace bathside {

struct CopyPlan {
    Millis every{};  // zero: not by the clock
    bool atShiftEnd = false;
    [[nodiscard]] bool isSet() const { return every > Millis(0) || atShiftEnd; }
    friend bool operator==(const CopyPlan&, const CopyPlan&) = default;
};

/// A copy may be made now.
[[nodiscard]] bool isTimeForCopies(const Bench& bench, const Stamp& now);
[[nodiscard]] bool isCopyDue(const CopyPlan& plan, const Bench& bench, const Stamp& now);
/// It has been due for `kCopyPatience`, whatever was in the way.
[[nodiscard]] bool isCopyLate(const CopyPlan& plan, const Bench& bench, const Stamp& now);

// Both are our own choice.
inline constexpr Millis kSealPatience{30'000};
inline constexpr Millis kCopyPatience{15 * 60'000};

}  // namespace bathside
