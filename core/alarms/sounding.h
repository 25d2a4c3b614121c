#pragma once

// What the alarm thread needs to know, and no more: what is to be heard now and when to look again.
//
// A `SoundSource` is immutable once published: any thread may ask it, at any time, without a lock.

#include <optional>
#include <string>

#include "core/alarms/level.h"
#include "core/base/time.h"

namespace bathside {

struct Sounding {
    std::optional<Level> level;          // worst alarm that is not hushed; none: silence
    std::string alarm;                   // its id, for the record
    std::optional<BootTime> nextChange;  // first instant after now at which the answer can differ
    friend bool operator==(const Sounding&, const Sounding&) = default;
};

class SoundSource {
public:
    SoundSource() = default;
    SoundSource(const SoundSource&) = delete;
    SoundSource& operator=(const SoundSource&) = delete;
    virtual ~SoundSource() = default;

    [[nodiscard]] virtual Sounding at(const Stamp& now) const = 0;
};

}  // namespace bathside
