#pragma once

// The one clock that matters most now: the ampoule with the least time left, else the next pull,
// else the bag nearest its limit. Pure.

#include <optional>

#include "core/alarms/alarms.h"

namespace bathside::ui {

struct Urgent {
    enum class Of : std::uint8_t { Ampoule, NextPull, Bag };
    Of of{};
    LimitName limit{};
    Subject subject;
    Micros left{};  // below zero: passed
    std::optional<Level> level;
    bool certain = true;
};

[[nodiscard]] std::optional<Urgent> mostUrgent(const Bench& bench, const Alarms& due,
                                               const Stamp& now);

/// Time until that bag's limit; none before its age runs or without a limit.
[[nodiscard]] std::optional<Elapsed> bagLeft(const Bag& bag, const Stamp& now);
/// Time until the next swirl is due; none before it is mixed.
[[nodiscard]] std::optional<Micros> swirlLeft(const Bag& bag, const Stamp& now);

/// The level of the alarm about that limit and subject; none: no alarm.
[[nodiscard]] std::optional<Level> levelFor(const Alarms& due, LimitName limit,
                                            const Subject& subject);
/// The worst level of any alarm about that subject.
[[nodiscard]] std::optional<Level> worstFor(const Alarms& due, const Subject& subject);

}  // namespace bathside::ui
