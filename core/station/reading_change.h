#pragma once

// A live thermometer that says something else than is written of it: noise, or news?
//
// A reading that flickers about a limit, or a fault that alternates with good readings, would write
// an event and raise or end an alarm at each turn. So a change is written once nothing but change
// has come for a while, in `kLastingReadings` at least: longer for the better than for the worse,
// so that noise does not lead back and forth. Two wait for `kUrgentTime` and no more readings:
// that a thermometer is gone, which says nothing more, and a change for the worse around an ampoule
// in the bath, so that it is told within 5 s. Pure. (Spec: temperatures, reading; the trail.)

#include <optional>

#include "core/bath/source.h"
#include "core/bench/bench.h"

namespace bathside {

inline constexpr int kLastingReadings = 3;
inline constexpr Millis kUrgentTime{4'000};
inline constexpr Millis kWorseTime{5'000};
inline constexpr Millis kBetterTime{15'000};

/// What a reading is beside the last one written of its thermometer.
enum class ReadingNews : std::uint8_t {
    None,    // the same
    Change,  // another verdict or fault
    AtOnce,  // due for the trace, the first one, or good after a fault
};

[[nodiscard]] ReadingNews newsOf(const Bench& bench, const ReadingTaken& taken, const Stamp& at);

enum class Patience : std::uint8_t { Urgent, Worse, Better };

struct ReadingChange {
    Stamp since;       // the first of the readings that all differ from what is written
    int readings = 0;  // that do
    RawReading last;   // of them
    Patience patience = Patience::Worse;  // with the last one
};

[[nodiscard]] Patience patienceWith(const Bench& bench, const ReadingTaken& taken);

/// When it is written unless a reading says otherwise before; none: it waits for more like it.
[[nodiscard]] std::optional<BootTime> dueAt(const ReadingChange& change);

}  // namespace bathside
