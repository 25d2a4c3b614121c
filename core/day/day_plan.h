#pragma once

// The day's plan as it stands now: what to pull next and when, how long each bag lasts, what has to
// be said about it.
//
// Derived from the bench and the time, never kept in the record; what the record has is the start
// of the next pull, written whenever it moves. (Spec: planning, planning again; checks, flow of the
// day.)

#include <optional>
#include <variant>
#include <vector>

#include "core/day/day_input.h"
#include "core/plan/plan.h"

namespace bathside {

/// The bag that the bench makes next.
struct NextBag {
    LineId line;
    MicroLitres volume;
    struct Part {
        ComponentId component;
        LotId lot;  // empty: any
        int ampoules = 0;
    };
    std::vector<Part> parts{};
    WallTime earliest{};  // begun before it, the bag passes its limit before it is empty
    WallTime start{};     // when the bench begins with it
    WallTime mixedBy{};
    WallTime firstBird{};
    WallTime lastBird{};
    std::int64_t birds = 0;
};

/// How long the bag on a line lasts at its rate.
struct BagForecast {
    LineId line;
    BagId bag;
    WallTime empty{};
    WallTime earliest{};
    std::optional<WallTime> latest;  // none: the rate may be 0
    WallTime limit{};                // its last bird must be earlier than this
    std::int64_t birds = 0;          // that are left in it
    std::int64_t wasted = 0;         // doses that are still in it at its limit
};

/// The line has nothing to give from `from` until `until`.
struct LineWaits {
    LineId line;
    WallTime from{};
    WallTime until{};
};
/// The line stands still; the plan takes it to go on now.
struct LineStands {
    LineId line;
    WallTime since{};
};
/// The next bag should have been begun by now.
struct PullLate {
    LineId line;
    Millis by{};
};
using DayRemark = std::variant<LineWaits, LineStands, PullLate>;

struct DayPlan {
    WallTime midnight{};  // from which the plan's times count
    DayToday today;
    plan::Plan plan;
    std::optional<NextBag> next;  // none: nothing more is to be made, or the bench has no schedule
    std::vector<BagForecast> forecasts;
    std::vector<DayRemark> remarks;
};

/// None where nothing is planned. Deterministic; the work is bounded.
[[nodiscard]] std::optional<DayPlan> dayPlan(const Bench& bench, const DayClock& clock,
                                             const Stamp& now);

/// The start to be written down: none where it is the one on record, give or take half a minute,
/// and none where it is past and the bench is merely late: that it is due stands.
[[nodiscard]] std::optional<WallTime> movedStart(const Bench& bench, const DayPlan& plan,
                                                 WallTime now);

}  // namespace bathside
