#pragma once

// What the last readings say about the water: is this one plausible, is the bath steady, is it ready?

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

/// Why this value cannot be the water, given the last good reading; none: it can.
[[nodiscard]] std::optional<ReadingFault> implausible(const BathRules& rules, MilliCelsius value,
                                                      const std::optional<TakenReading>& last, const Stamp& now);

/// Standard uncertainty of the water's own movement over the last minute before `now`, °C.
[[nodiscard]] double stability(std::span<const TakenReading> readings, const Stamp& now);

/// Inside, and moving less than the card's `steady` per minute (least squares over the last 2 minutes), for the
/// card's settling time; by hand (readings more than 2 minutes apart): two entries at least that far
/// apart are inside, with nothing but inside between. Faulty readings are skipped.
[[nodiscard]] bool ready(const BathRules& rules, std::span<const TakenReading> readings, const Stamp& now);

}  // namespace bathside
