#pragma once

// What this shift's record says of its bath: the dips that its pulls made, the times after which
// ampoules were opened, and how well the card's figures foresaw both.
//
// Derived from the journal, as amended; nothing of it is kept. A dip needs a reading within two
// minutes before the first ampoule went in and a lower or later one of the same thermometer within
// the three minutes after it. Opened is tapped after slush was seen, so a fitted film coefficient
// is at most that of slush. (Spec: temperatures, heat budget and thaw time.)

#include <optional>
#include <vector>

#include "core/bath/heat_fit.h"
#include "core/bath/thaw_fit.h"
#include "core/bench/state.h"

namespace bathside {

/// One a pull, where the record has it.
[[nodiscard]] std::vector<LoggedDip> dipsOf(const State& state);
/// One a pull, of its ampoule that was opened soonest after it went in: both tapped, in water of a
/// calibrated thermometer. The last `most` pulls.
[[nodiscard]] std::vector<LoggedThaw> opensOf(const State& state, const HeatRules& heat,
                                              std::size_t most);

template <typename Fit>
struct FitOfPulls {
    Fit fit;
    int pulls = 0;
    double foreseen = 0;  // rms of what the card's figures foresee less what was logged, °C or s
};

[[nodiscard]] std::optional<FitOfPulls<MassFit>> massOf(const State& state, const HeatRules& heat);
/// From the last six pulls; some hundred runs of the thaw model.
[[nodiscard]] std::optional<FitOfPulls<FilmFit>> filmOf(const State& state, const HeatRules& heat);

}  // namespace bathside
