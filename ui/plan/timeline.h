#pragma once

// The day's plan as rows of bars over time, before it has a place on the screen.
//
// One row a line, in the plan's order; then the bench, with one lane a preparer. Times are the
// plan's (elapsed since local midnight). Bars of one lane never overlap and are in order.

#include <optional>
#include <vector>

#include "core/day/day_plan.h"

namespace bathside::ui {

/// One bag on a line, or one being made at the bench.
struct TimelineBar {
    enum class Kind : std::uint8_t { Planned, Mixed, Open, Making };
    Kind kind = Kind::Planned;
    plan::BagPlace place;
    plan::DayTime from{}, to{};
    std::size_t lane = 0;  // of the bench: the preparer; of a line: always 0
    MicroLitres volume{};
    plan::Count birds = 0;
    // Of a bag on a line: its life, from the first ampoule in diluent to the limit.
    plan::DayTime born{}, limit{};
    bool small = false;  // its margin
    bool next = false;   // the bench begins with it next

    [[nodiscard]] Millis margin() const { return limit - to; }
};

struct TimelineRow {
    std::optional<std::size_t> line;  // in the plan's order; none: the bench
    std::size_t lanes = 1;
    std::vector<TimelineBar> bars;
    std::vector<plan::Break> breaks;
    bool hasPlan = true;  // no: it cannot be done
};

struct Timeline {
    plan::DayTime from{}, to{};  // whole half hours; what is shown
    plan::DayTime now{};
    std::vector<TimelineRow> rows;
};

[[nodiscard]] Timeline timelineOf(const DayPlan& day);

}  // namespace bathside::ui
