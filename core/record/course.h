#pragma once

// How it came to a deviation, as numbers to draw: what was allowed, how far it went, and the steps
// on the way.

#include <optional>
#include <vector>

#include "core/bench/state.h"

namespace bathside {

enum class CourseUnit : std::uint8_t { Time, Temperature, Birds };  // ms, m°C, birds

struct Course {
    /// What stands beside the axis; a step of an ampoule by its name.
    enum class What : std::uint8_t {
        Out,
        InBath,
        Opened,
        InDiluent,
        Rinsed,
        InBag,
        Started,
        FirstDiluent,
        Mixed,
        Hung,
        Down,
    };
    struct Tick {
        What what{};
        std::int64_t at = 0;
        bool timed = true;
    };

    CourseUnit unit{};
    std::int64_t from = 0, to = 0;  // allowed; times from the first tick
    std::int64_t reached = 0;       // beyond one of them
    std::vector<Tick> ticks;        // in order; none where no more is known
};

/// Of a deviation carried from a shift before only limit and overrun are known.
[[nodiscard]] Course courseOf(const State& state, const DeviationOnRecord& deviation);

}  // namespace bathside
