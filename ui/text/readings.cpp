#include "ui/text/readings.h"

#include "ui/text/numbers.h"

namespace bathside::ui {

QString readingText(const Bench& bench, const ReadingTaken& reading)
{
    const MilliCelsius value = reading.corrected.value_or(MilliCelsius{});
    return isCalibrated(bench, reading.probe) && reading.expanded
               ? temperatureText(value, *reading.expanded)
               : temperatureText(value);
}

bool isCalibrated(const Bench& bench, const ProbeId& id)
{
    const auto probe = bench.probes.find(id);
    return probe != bench.probes.end() && !probe->second->points.empty();
}

bool isTooOld(const Bench& bench, const TakenReading& reading, const Stamp& now)
{
    const auto oldest = bench.card ? bench.card->limit(LimitName::Reading).time.at : std::nullopt;
    return oldest && elapsed(reading.at, now).time >= *oldest;
}

}  // namespace bathside::ui
