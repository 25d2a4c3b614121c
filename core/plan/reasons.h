#pragma once

// Why a line cannot be done, and what would help most easily; what should be looked at in a plan
// that can. Facts only: words are made in app/cli and ui/text. (Spec: planning, rule 8.)

#include <cstddef>
#include <optional>
#include <variant>
#include <vector>

#include "core/plan/cover.h"
#include "core/plan/effort.h"
#include "core/plan/input.h"
#include "core/plan/stores.h"

namespace bathside::plan {

/// Too few usable ampoules, with everything else as it is.
struct AmpoulesMissing {
    std::size_t component = 0;
    Count birds = 0;               // that are to be done
    std::optional<Count> missing;  // so many more would do; none: no ampoule of it is known
    friend bool operator==(const AmpoulesMissing&, const AmpoulesMissing&) = default;
};

/// Too few bags; so many more of one size would do.
struct BagsMissing {
    std::optional<MicroLitres> volume;  // none: no size is known
    Count missing = 0;
    friend bool operator==(const BagsMissing&, const BagsMissing&) = default;
};

/// No one thing would do by itself, and none is short by itself.
struct StoresNotEnough {
    friend bool operator==(const StoresNotEnough&, const StoresNotEnough&) = default;
};

/// No bag holds a dose more than what cannot be injected and what priming takes.
struct PrimingTakesAll {
    MicroLitres leastVolume;  // a bag of this would do
    friend bool operator==(const PrimingTakesAll&, const PrimingTakesAll&) = default;
};

/// No bag holds a dose more than what cannot be injected.
struct ResidualTakesAll {
    MicroLitres leastVolume;
    friend bool operator==(const ResidualTakesAll&, const ResidualTakesAll&) = default;
};

/// At this rate not one bird is done before a bag's time is up.
struct LimitTooShort {
    Millis missing{};  // so much longer a limit, or shorter hang, dilute and slack time, would do
    friend bool operator==(const LimitTooShort&, const LimitTooShort&) = default;
};

/// A bag would have to hang through a break that it does not outlast.
struct BreakInTheWay {
    std::optional<Millis> idleNeeded;  // this longest idle time would do, in whole minutes
    friend bool operator==(const BreakInTheWay&, const BreakInTheWay&) = default;
};

/// Neither a plan was found nor shown to be impossible within the effort.
struct Undecided {
    Cost atLeast;  // what any plan would cost
    friend bool operator==(const Undecided&, const Undecided&) = default;
};

/// It is impossible, but the effort did not last to find what is missing.
struct Unexplained {
    friend bool operator==(const Unexplained&, const Unexplained&) = default;
};

using Reason = std::variant<AmpoulesMissing, BagsMissing, StoresNotEnough, PrimingTakesAll,
                            ResidualTakesAll, LimitTooShort, BreakInTheWay, Undecided, Unexplained>;

/// For a line that cannot be done with what `level` has left; never empty.
[[nodiscard]] std::vector<Reason> reasonsFor(const DayInput& input, const Line& line,
                                             const Stores& stores, const Level& level,
                                             Effort& effort);

/// A line's bag, both counted from 0.
struct BagPlace {
    std::size_t line = 0;
    std::size_t bag = 0;
    friend bool operator==(const BagPlace&, const BagPlace&) = default;
};

struct RunsThroughBreak {
    BagPlace bag;
    Break pause;
    friend bool operator==(const RunsThroughBreak&, const RunsThroughBreak&) = default;
};

struct IdlesToSpare {
    BagPlace bag;  // that goes on after the break
    Millis idle{};
    friend bool operator==(const IdlesToSpare&, const IdlesToSpare&) = default;
};

struct NoSpareLeft {
    std::size_t component = 0;
    std::size_t lot = 0;
    friend bool operator==(const NoSpareLeft&, const NoSpareLeft&) = default;
};

struct SmallMargin {
    BagPlace bag;
    Millis margin{};
    friend bool operator==(const SmallMargin&, const SmallMargin&) = default;
};

using Warning = std::variant<RunsThroughBreak, IdlesToSpare, NoSpareLeft, SmallMargin>;

}  // namespace bathside::plan
