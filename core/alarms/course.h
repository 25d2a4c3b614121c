#pragma once

// How one alarm rises: the instant at which each of its levels begins, on the boot clock of now.
//
// Every row of the card comes down to this, whether it goes by time, by verdict or by birds, so
// that level, *since* and the next change are read off in one place. Wall time has whole ms: an
// instant that comes from it is good to 1 ms, and never early. Pure.

#include <array>
#include <optional>

#include "core/alarms/alarms.h"

namespace bathside {

/// A recorded instant on the boot clock of now; below zero: before this boot.
struct Origin {
    BootTime at{};
    bool certain = true;  // false: reckoned from wall time, because the machine was started between
    bool known =
        true;  // false: that wall time cannot be relied on; `at` is then this boot's beginning
};

[[nodiscard]] Origin originOf(const Bench& bench, const Stamp& from, const Stamp& now);
[[nodiscard]] BootTime onBootClock(WallTime at, const Stamp& now);
[[nodiscard]] Origin laterOf(const Origin& a, const Origin& b);
[[nodiscard]] Origin earlierOf(const Origin& a, const Origin& b);

/// When each level begins: none where the card has no such level, or the facts do not lead to it.
using Begins = std::array<std::optional<BootTime>, 3>;

/// By time from `origin`. Where that is not known, the limit counts as passed when this boot began.
/// (Spec: the job, section 3, power cut in mid-pull.)
[[nodiscard]] Begins beginsFrom(const Origin& origin, const Thresholds<Millis>& thresholds);

struct AlarmCourse {
    AlarmCause cause;
    Subject subject;
    Begins begins;
    std::optional<BootTime> limitAt;        // where the limit is a matter of time
    std::optional<std::int64_t> birdsLeft;  // where it is one of birds
    bool certain = true;

    [[nodiscard]] std::optional<Level> level(BootTime now) const;
    [[nodiscard]] std::optional<BootTime> nextRise(BootTime now) const;
};

/// By time, from `from` on.
[[nodiscard]] AlarmCourse timedCourse(AlarmCause cause, Subject subject, const Origin& from,
                                      const Thresholds<Millis>& thresholds);
/// At `level` since then, not by time but for the overrun, which counts from when the limit is
/// passed.
[[nodiscard]] AlarmCourse judgedCourse(AlarmCause cause, Subject subject, Level level,
                                       const Origin& since, const std::optional<Millis>& overrun);

}  // namespace bathside
