#pragma once

// What the last readings say about the water: is this one plausible, is the bath steady, is it
// ready?
//
// Readings stand oldest first; faulty ones and those after `now` are skipped. Pure.
// (Spec: temperatures, reading and verdict.)

#include <optional>
#include <span>

#include "core/base/time.h"
#include "core/card/card.h"
#include "core/facts/facts.h"

namespace bathside {

/// A reading as the state keeps it.
struct TakenReading {
    Stamp at;
    ReadingTaken fact;
};

/// Why this indicated value cannot be the water: beyond the card's bounds, or further from `last`,
/// the last good reading of the same probe, than water can move in the time between (a second at
/// least). None: it can.
[[nodiscard]] std::optional<ReadingFault> implausible(const BathRules& rules, MilliCelsius value,
                                                      const std::optional<TakenReading>& last,
                                                      const Stamp& now);

/// Standard uncertainty of the water's own movement over the last minute before `now`, °C: the
/// standard deviation of this probe's readings in it (JCGM 100, type A); 0 with fewer than two.
[[nodiscard]] double stability(std::span<const TakenReading> readings, const ProbeId& probe,
                               const Stamp& now);

/// Every reading of the card's settling time was inside and, where it has others within the 2
/// minutes before it, moving less than the card's `steady` per minute (least squares over those 2
/// minutes, same probe, a minute at least). Readings by hand, further apart, come to: two entries
/// at least the settling time apart are inside with nothing but inside between. Whether the newest
/// is too old is `standing`'s question.
[[nodiscard]] bool ready(const BathRules& rules, std::span<const TakenReading> readings,
                         const Stamp& now);

/// The last good reading, unless it is `tooOld` or more (the card's limit `reading`).
[[nodiscard]] std::optional<TakenReading> standing(std::span<const TakenReading> readings,
                                                   const Stamp& now, Millis tooOld);

}  // namespace bathside
