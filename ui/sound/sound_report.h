#pragma once

// What the alarm thread did, for the service to record. Values only; instants are of the thread's
// clock, taken when it happened.

#include <optional>
#include <string>
#include <variant>

#include "core/alarms/level.h"
#include "core/base/time.h"
#include "ui/sound/audio_out.h"

namespace bathside::ui::report {

/// First found due as the worst one.
struct AlarmRaised {
    std::string alarm;
    Level level{};
    Stamp at{};
    Micros late{};  // after the instant it became due
};

/// Given to a device, for the first time since it was raised or hushed.
struct AlarmSounded {
    std::string alarm;
    Level level{};
    Stamp at{};
    Micros late{};  // after the instant it became due
    std::string device;
};

/// NO SOUND from here on.
struct SoundLost {
    std::string device;  // the last that worked; empty: there never was one
    OutFault fault{};
    Stamp at{};
};

struct SoundFound {
    std::string device;
    Stamp at{};
};

struct SoundMoved {
    std::string from;
    std::string to;
    Stamp at{};
};

struct VolumeRaised {
    VolumeRaise raise;
    Stamp at{};
};

/// Wall time was set. Alarms wait on the boot clock and do not care.
struct ClockStepped {
    Millis by{};
    Stamp at{};
};

}  // namespace bathside::ui::report

namespace bathside::ui {

using SoundReport =
    std::variant<report::AlarmRaised, report::AlarmSounded, report::SoundLost, report::SoundFound,
                 report::SoundMoved, report::VolumeRaised, report::ClockStepped>;

}  // namespace bathside::ui
