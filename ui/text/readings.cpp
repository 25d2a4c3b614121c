#include "ui/text/readings.h"

#include "ui/text/numbers.h"

namespace bathside::ui {

QString readingText(const Bench& bench, const ReadingTaken& reading)
{
    const MilliCelsius value = reading.corrected.value_or(MilliCelsius{});
    const auto probe = bench.probes.find(reading.probe);
    const bool isCalibrated = probe != bench.probes.end() && !probe->second->points.empty();
    return isCalibrated && reading.expanded ? temperatureText(value, *reading.expanded)
                                            : temperatureText(value);
}

bool isTooOld(const Bench& bench, const TakenReading& reading, const Stamp& now)
{
    const auto oldest = bench.card ? bench.card->limit(LimitName::Reading).time.at : std::nullopt;
    return oldest && elapsed(reading.at, now).time >= *oldest;
}

}  // namespace bathside::ui
