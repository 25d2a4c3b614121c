#pragma once

// What the record says of its bath: the dips that this shift's pulls made, the times after which
// ampoules were opened, and with those of the shifts before (core/bath/learned.h) what follows from
// them, and how well the card's figures foresaw both.
//
// Derived from the journal, as amended; the next shift is told of it when it opens. A dip needs a
// reading within two minutes before the first ampoule went in and a lower or later one of the same
// thermometer within the three minutes after it. Opened is tapped after slush was seen, so a fitted
// film coefficient is at most that of slush. (Spec: temperatures, heat budget and thaw time.)

#include <optional>
#include <vector>

#include "core/bath/learned.h"
#include "core/bench/state.h"

namespace bathside {

/// One a pull, where the record has it.
[[nodiscard]] std::vector<LoggedDip> dipsOf(const State& state);
/// One a pull, of its ampoule that was opened soonest after it went in: both tapped, in water of a
/// calibrated thermometer. The last `most` pulls.
[[nodiscard]] std::vector<LoggedThaw> opensOf(const State& state, const HeatRules& heat,
                                              std::size_t most);

struct FitOfPulls {
    LearnedFigure figure;
    double foreseen = 0;  // rms of what the card's figures foresee less what was logged, °C or s
};

/// From the last pulls, those of the shifts before among them; `heat` is the card's.
[[nodiscard]] std::optional<FitOfPulls> massOf(const State& state, const HeatRules& heat);
/// Some hundred runs of the thaw model.
[[nodiscard]] std::optional<FitOfPulls> filmOf(const State& state, const HeatRules& heat);

/// What this shift leaves to one that is judged by `card`; none: no pull says anything. As long as
/// `filmOf`, where this shift has logged something.
[[nodiscard]] std::optional<BathLearned> learnedFor(const State& state, const Card& card);

}  // namespace bathside
