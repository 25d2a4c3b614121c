#pragma once

// The day that is to be planned: what there is to do, and with what.
//
// Whole microlitres, whole milliseconds since the local midnight of `day` (below zero before it,
// beyond 24 h after it), whole birds. `dayInputFrom` gives only values that keep the ranges named
// in `read_input.h`; whoever makes one otherwise keeps them as well. (Spec: planning, input.)

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/time.h"
#include "core/base/units.h"

namespace bathside::plan {

using DayTime = Millis;
using Count = std::int64_t;

/// Half-open. In any order, overlapping or empty: `LineClock` puts them right.
struct Break {
    DayTime from{};
    DayTime to{};
    friend bool operator==(const Break&, const Break&) = default;
};

/// A bag that is there already, mixed or being mixed (planning again during the day).
struct MadeBag {
    MicroLitres volume;
    MicroLitres left;  // of it, what has not been injected yet
    DayTime firstInDiluent{};
};

struct Line {
    std::string name;
    Count birds = 0;  // of the whole day
    Count birdsDone = 0;
    Count ratePerHour = 1;
    DayTime start{};
    std::vector<Break> breaks{};
    std::optional<MadeBag> openBag{};  // hangs on the line now
    std::vector<MadeBag> mixedBags{};  // made for this line, oldest first
};

struct BagStock {
    MicroLitres volume;
    std::optional<Count> count;  // none: unlimited
};

/// Each entry is a lot of its own, even where names repeat.
struct Lot {
    std::string name;
    Count doses = 1;             // per ampoule
    std::optional<Count> count;  // ampoules; none: unlimited
    std::chrono::sys_days expires;
};

struct Component {
    std::string name;
    std::vector<Lot> lots;
};

struct DayInput {
    std::chrono::sys_days day;
    MicroLitres dose{200};   // per bird
    Millis useLimit{};       // first ampoule in diluent → last bird
    Millis diluteTime{};     // first ampoule in diluent → mixed
    Millis hangTime{};       // mixed → first bird, at least
    Millis changeover{};     // the line stands still between two bags
    Millis benchSlack{};     // kept free in every bag's window
    MicroLitres residual{};  // of a bag, cannot be injected
    MicroLitres prime{};     // lost from a line's first bag
    Millis longestIdle{};    // working time a line may stand still to spare a bag
    Millis prepareTime{};    // bench busy from the start of a bag until it is mixed
    std::size_t preparers = 1;
    std::vector<Line> lines{};  // in order of priority
    std::vector<BagStock> bags{};
    std::vector<Component> recipe{};
    std::optional<DayTime> now{};  // no pull starts before it
};

}  // namespace bathside::plan
