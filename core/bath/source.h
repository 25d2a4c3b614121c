#pragma once

// The port behind which every thermometer stands: live, recorded, simulated or typed in.
//
// A source hands out raw text or values with the instant they were taken; it never judges. Polled
// from one thread; `poll` returns at once (a slow conversion is the driver's own business).

#include <optional>
#include <string>
#include <variant>

#include "core/base/ids.h"
#include "core/base/time.h"
#include "core/base/units.h"
#include "core/facts/words.h"

namespace bathside {

struct RawReading {
    ProbeId probe;
    Stamp at;
    std::variant<MilliCelsius, ReadingFault> value;
};

class ReadingSource {
public:
    ReadingSource() = default;
    ReadingSource(const ReadingSource&) = delete;
    ReadingSource& operator=(const ReadingSource&) = delete;
    virtual ~ReadingSource() = default;

    /// The next reading that is there by `now`, if any.
    [[nodiscard]] virtual std::optional<RawReading> poll(const Stamp& now) = 0;
};

}  // namespace bathside
