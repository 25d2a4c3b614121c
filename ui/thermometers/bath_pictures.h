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

/// What this shift's pulls say of the bath.
struct BathFits {
    std::optional<FitOfPulls<MassFit>> mass;
    std::optional<FitOfPulls<FilmFit>> film;
};

/// Some hundred runs of the thaw model.
[[nodiscard]] BathFits fitsOf(const State& state, const HeatRules& heat);
/// And how well the card's figures foresaw it; empty: no pull says anything.
[[nodiscard]] QString fitsText(const BathFits& fits, const HeatRules& heat);

}  // namespace bathside::ui
