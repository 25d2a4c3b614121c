#pragma once

// How it came to a deviation, as numbers to draw: what was allowed, how far it went, the steps on
// the way, and what the bath was meanwhile.

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

    /// Of the bath, without a fault; as it was judged then.
    struct Reading {
        std::int64_t at = 0;
        MilliCelsius value;  // corrected
        std::optional<Verdict> verdict;
    };

    CourseUnit unit{};
    std::int64_t from = 0, to = 0;  // allowed; times from the first tick
    std::int64_t reached = 0;       // beyond one of them
    std::vector<Tick> ticks;        // in order; none where no more is known
    std::vector<Reading> readings;  // of a time: those between its first and its last; in order
};

/// Of a deviation carried from a shift before only limit and overrun are known.
[[nodiscard]] Course courseOf(const State& state, const DeviationOnRecord& deviation);

}  // namespace bathside
