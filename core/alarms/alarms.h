#pragma once

// What is due now, since when, how severe, and when that can next change. Computed, never
// scheduled: after a crash, a restart or a suspend the right alarms are simply there again.
//
// Pure. What alarms there are follows from the card's table and from the station itself (spec:
// alarms). One cause, one alarm: its level rises, it does not multiply. Never early, not by a ms.

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/alarms/level.h"
#include "core/alarms/sounding.h"
#include "core/bench/bench.h"

namespace bathside {

enum class StationCause : std::uint8_t { NoSound, NotRecorded, ClockStepped, ProbeLost };
template <>
struct Names<StationCause> {
    static constexpr std::array<std::string_view, 4> all{"no sound", "not recorded",
                                                         "clock stepped", "probe lost"};
};

using AlarmCause = std::variant<LimitName, StationCause>;

struct Alarm {
    std::string id;  // cause and subject, e.g. "thaw ampoule:3/2": the same for all levels
    AlarmCause cause;
    Subject subject;
    Level level{};
    BootTime since{};  // when this level began, on the boot clock of `now`
    std::optional<Micros>
        left;  // until the limit; below zero: passed by so much. None: not a matter of time
    std::optional<std::int64_t> birdsLeft;  // likewise in birds
    bool certain = true;                    // false: reckoned from wall time across a start
    bool hushed = false;                    // heard, and the card's time is not over yet
};

struct Alarms {
    std::vector<Alarm> due;  // worst level first, the oldest first among equals
    std::optional<BootTime>
        nextChange;  // first instant after now at which `due` can differ (rise, end of a hush)
};

[[nodiscard]] Alarms alarms(const Bench& bench, const Stamp& now);

/// A bench as the alarm thread sees it. Keeps its own copy.
[[nodiscard]] std::shared_ptr<const SoundSource> soundSource(std::shared_ptr<const Bench> bench);

/// Time left of one ampoule's running limit (exposure, then thaw); none when nothing runs.
struct Countdown {
    LimitName limit{};
    Thresholds<Millis>
        thresholds;  // as they hold for it: the heads-up already brought forward by pace
    Micros run{};    // since it began
    Micros left{};   // below zero: passed
    bool certain = true;
};
[[nodiscard]] std::optional<Countdown> countdown(const Bench& bench, const Ampoule& ampoule,
                                                 const Stamp& now);

}  // namespace bathside
