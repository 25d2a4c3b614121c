#pragma once

// What set-up's charts show: a thermometer's last minutes, what pulls do to the bath, and the time
// to slush over the bath's temperature.

#include <optional>
#include <vector>

#include "core/bath/forecast.h"
#include "core/bath/source.h"
#include "core/bench/state.h"
#include "core/day/bath_log.h"
#include "ui/charts/chart.h"

namespace bathside::ui {

/// Corrected, in minutes before now; broken where it was no reading.
struct TracePoint {
    double minutes = 0;  // 0 or less
    std::optional<double> celsius;
};

/// Live, as the driver keeps it; by hand, what is on record of this shift.
[[nodiscard]] std::vector<TracePoint> traceOf(const Bench& bench, const Probe& probe,
                                              const std::vector<RawReading>& live,
                                              const Stamp& now);
[[nodiscard]] ChartContent traceContent(const Bench& bench, const Probe& probe,
                                        const std::vector<TracePoint>& trace);
[[nodiscard]] ChartContent dipContent(const BathForecast& forecast, int usualPull);
[[nodiscard]] ChartContent slushContent(const std::vector<SlushPoint>& curve);

/// How many at a time, how deep, how long; and that the thermometer decides.
[[nodiscard]] QString forecastText(const BathForecast& forecast, const BathNow& now, int usualPull);

/// What pulls say of the bath, those of the shifts before among them.
struct BathFits {
    std::optional<FitOfPulls> mass;
    std::optional<FitOfPulls> film;
    std::optional<LearnedFigure> inCue{};  // of the shifts before: what this shift's cue may go by
};

/// Some hundred runs of the thaw model.
[[nodiscard]] BathFits fitsOf(const State& state, const HeatRules& heat);
/// What set-up says of the bath in a few words: its mass, where it is a fitted one.
[[nodiscard]] QString bathLine(const BathLearned* learned);
/// And how well the card's figures foresaw it, and which are used; empty: no pull says anything.
[[nodiscard]] QString fitsText(const BathFits& fits, const HeatRules& heat);

}  // namespace bathside::ui
