#pragma once

// What is due now, since when, how severe, and when that can next change. Computed, never
// scheduled: after a crash, a restart or a suspend the right alarms are simply there again.
//
// Pure. What alarms there are follows from the card's table and from the station itself (spec:
// alarms). One cause, one alarm: its level rises, it does not multiply. Never early, not by a ms.
// Facts end an alarm, time never does: a bath that was outside is so until a reading says
// otherwise.

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/alarms/level.h"
#include "core/alarms/sounding.h"
#include "core/bench/bench.h"

namespace bathside {

enum class StationCause : std::uint8_t {
    NoSound,
    NotRecorded,
    ClockStepped,
    ProbeLost,
    Vessel,     // it loses too much
    VesselLow,  // below its own minimum by the last dipstick reading; heads-up: by its loss since
};
template <>
struct Names<StationCause> {
    static constexpr std::array<std::string_view, 6> all{
        "no sound", "not recorded", "clock stepped", "probe lost", "vessel", "vessel low"};
};

using AlarmCause = std::variant<LimitName, StationCause>;

struct Alarm {
    std::string id;  // cause and subject, e.g. "thaw ampoule:3/2": the same for all levels
    AlarmCause cause;
    Subject subject;
    Level level{};
    BootTime since{};  // when this level began, on the boot clock of `now`
    /// Until the limit; below zero: passed by so much. None: not a matter of time.
    std::optional<Micros> left;
    std::optional<std::int64_t> birdsLeft;  // likewise in birds
    bool certain = true;                    // false: reckoned from wall time across a start
    bool hushed = false;  // heard at this level; for how long is decided when it is heard
};

struct Alarms {
    std::vector<Alarm> due;  // worst level first, the oldest first among equals
    /// The first instant after now at which `due` can differ: a rise, or the end of a hush.
    std::optional<BootTime> nextChange;
};

[[nodiscard]] Alarms alarms(const Bench& bench, const Stamp& now);

/// A bench as the alarm thread sees it. Keeps its own copy.
[[nodiscard]] std::shared_ptr<const SoundSource> soundSource(std::shared_ptr<const Bench> bench);

/// Time left of one ampoule's running limit (exposure, then thaw); none when nothing runs.
struct Countdown {
    LimitName limit{};
    /// As they hold for it: the heads-up already brought forward by pace.
    Thresholds<Millis> thresholds;
    Micros run{};   // since it began
    Micros left{};  // below zero: passed
    bool certain = true;
};
[[nodiscard]] std::optional<Countdown> countdown(const Bench& bench, const Ampoule& ampoule,
                                                 const Stamp& now);

}  // namespace bathside
