#pragma once

// A line's working time: birds an hour, and breaks that are skipped.
//
// Breaks are half-open; overlapping or touching ones are one, empty ones none. Work that ends at a
// break's beginning ends there. (Spec: planning, rule 3.)

#include <vector>

#include "core/plan/input.h"

namespace bathside::plan {

class LineClock {
public:
    LineClock(std::vector<Break> breaks, Count ratePerHour);

    /// `at`, or the end of the break it falls in.
    [[nodiscard]] DayTime working(DayTime at) const;
    /// The first break that ends after `at`; none: nothing but work from there on.
    [[nodiscard]] const Break* breakAfter(DayTime at) const;
    /// Breaks that end after `at`.
    [[nodiscard]] Count breaksAfter(DayTime at) const;

    /// When `work` that begins at `from` is done.
    [[nodiscard]] DayTime endOf(DayTime from, Millis work) const;
    /// Working time from `from` to `to`; none where `to` is not after `from`.
    [[nodiscard]] Millis workBetween(DayTime from, DayTime to) const;

    /// Rounded up to whole ms.
    [[nodiscard]] Millis workFor(Count birds) const;
    /// As many as `work` is enough for.
    [[nodiscard]] Count birdsIn(Millis work) const;

private:
    [[nodiscard]] std::vector<Break>::const_iterator firstAfter(DayTime at) const;

    std::vector<Break> m_breaks;  // in order, apart, none empty
    Count m_rate;
};

}  // namespace bathside::plan
