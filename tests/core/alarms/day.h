#pragma once

// A random day at the bench in words of the trade: who did what when, late now and then, with
// restarts and power cuts. What it knows nothing of: limits, alarms and the program's state.
//
// Instants are ms since the program was started that morning.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/bench/intent.h"

namespace bathside::test {

struct AmpouleLife {
    AmpouleRef ref;
    std::string component;
    Millis out{};
    std::optional<Millis> bath, opened, diluent;  // as tapped; none: left to the next tap
    Millis end{};                                 // in the bag, or lost
    std::optional<LossReason> lost;

    /// When the record has it in the bath: at the first tap that implies it.
    [[nodiscard]] std::optional<Millis> inBath() const
    {
        return bath ? bath : opened ? opened : inDiluent();
    }
    [[nodiscard]] std::optional<Millis> inDiluent() const
    {
        return diluent || lost ? diluent : std::optional(end);
    }
};

struct PullLife {
    std::vector<AmpouleLife> ampoules;
    std::string bag;
    [[nodiscard]] Millis first() const;
    [[nodiscard]] Millis closed() const;
};

struct Span {
    Millis from{}, to{};
};

struct BagLife {
    std::string id;
    Millis started{};
    MilliCelsius temperature;
    std::optional<Millis> mixed;
    std::optional<std::pair<Millis, std::string>> hung;
    std::vector<Millis> swirls;
    std::optional<Span> held;  // to its release, or to its end
    Millis down{};
};

struct LineLife {
    std::string id;
    Millis first{};  // mention
    std::vector<std::pair<Millis, std::int64_t>> counts;
    std::vector<Millis> needles, doseChecks;
};

struct Restart {
    Millis down{}, up{};
    bool powerCut = false;  // the machine, not only the program
};

struct Day {
    Millis opened{}, closed{};
    std::vector<PullLife> pulls;
    std::vector<BagLife> bags;
    std::vector<LineLife> lines;
    std::vector<std::pair<Millis, std::variant<Verdict, ReadingFault>>> readings;
    std::vector<Millis> newWater;
    std::vector<std::pair<Millis, Millis>> plans;  // said when, for when
    std::vector<Millis> soundProven;
    std::vector<Span> soundLost, storeFailed;
    std::vector<Span> clockStepped;  // until heard
    std::vector<Restart> restarts;
};

/// The same day for the same seed.
[[nodiscard]] Day dayFrom(unsigned seed);

/// The day as the bench's intents, in order of time.
struct Entry {
    Millis at{};
    Intent intent;
};
[[nodiscard]] std::vector<Entry> scriptOf(const Day& day, WallTime morning);

/// The thermometer whose readings `scriptOf` gives; it says what it is meant to say.
[[nodiscard]] DescribeProbe thermometer();

}  // namespace bathside::test
