#pragma once

// The bags that are there already: what is left in each, and which line it is for.

#include <vector>

#include "core/day/day_input.h"

namespace bathside {

class Supply {
public:
    Supply(const Bench& bench, const DayClock& clock, const Stamp& now)
        : m_bench(bench), m_clock(clock), m_now(now)
    {
    }

    /// The bag as the planner takes it; it must be one of the bench's.
    [[nodiscard]] plan::MadeBag madeBag(const BagId& id) const;
    /// Bags that are mixed or being made up, each to the line that runs out first.
    void shareOut(std::vector<LineToday>& lines) const;

private:
    [[nodiscard]] MicroLitres left(const Bag& bag) const;
    [[nodiscard]] WallTime runsOut(const LineToday& line) const;

    const Bench& m_bench;
    const DayClock& m_clock;
    const Stamp& m_now;
};

}  // namespace bathside
