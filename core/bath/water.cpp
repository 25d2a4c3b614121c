#include "core/bath/water.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace bathside {
namespace {

constexpr Micros kSlopeWindow = std::chrono::minutes(2);
constexpr Micros kShortestSlope =
    std::chrono::minutes(1);  // over less, the last digit makes the slope
constexpr Micros kStabilityWindow = std::chrono::minutes(1);
constexpr double kMillis = 1000;

double seconds(Micros time) { return std::chrono::duration<double>(time).count(); }

bool isGood(const TakenReading& reading)
{
    return !reading.fact.fault && (reading.fact.corrected || reading.fact.raw);
}

double celsius(const TakenReading& reading)
{
    const auto& fact = reading.fact;
    return static_cast<double>((fact.corrected ? *fact.corrected : *fact.raw).count) / kMillis;
}

bool isLater(const Stamp& at, const Stamp& now)
{
    return at.bootId == now.bootId && at.boot > now.boot;
}

std::vector<TakenReading> goodOnes(std::span<const TakenReading> readings, const Stamp& now)
{
    std::vector<TakenReading> good;
    for (const TakenReading& reading : readings)
        if (isGood(reading) && !isLater(reading.at, now))
            good.push_back(reading);
    return good;
}

/// Those of the last reading's own probe, at most `window` before it.
std::vector<TakenReading> sameProbeWithin(std::span<const TakenReading> good, Micros window)
{
    std::vector<TakenReading> near;
    for (const TakenReading& reading : good)
        if (reading.fact.probe == good.back().fact.probe &&
            elapsed(reading.at, good.back().at).time <= window)
            near.push_back(reading);
    return near;
}

double mean(const std::vector<double>& values)
{
    double sum = 0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

/// Least squares, °C per minute, over the two minutes up to the last of `good`; none: too short to
/// tell.
std::optional<double> slope(std::span<const TakenReading> good)
{
    const auto near = sameProbeWithin(good, kSlopeWindow);
    if (near.size() < 2 || elapsed(near.front().at, near.back().at).time < kShortestSlope)
        return std::nullopt;
    std::vector<double> minutes;
    std::vector<double> values;
    for (const TakenReading& reading : near) {
        minutes.push_back(seconds(elapsed(near.front().at, reading.at).time) / 60);
        values.push_back(celsius(reading));
    }
    const double middle = mean(minutes);
    const double level = mean(values);
    double covariance = 0;
    double variance = 0;
    for (std::size_t i = 0; i < near.size(); ++i) {
        covariance += (minutes[i] - middle) * (values[i] - level);
        variance += (minutes[i] - middle) * (minutes[i] - middle);
    }
    return covariance / variance;
}

bool isSteady(std::span<const TakenReading> good, MilliCelsius perMinute)
{
    const auto moving = slope(good);
    return !moving || std::abs(*moving) * kMillis < static_cast<double>(perMinute.count);
}

}  // namespace

std::optional<ReadingFault> implausible(const BathRules& rules, MilliCelsius value,
                                        const std::optional<TakenReading>& last, const Stamp& now)
{
    if (value < rules.lowest || value > rules.highest)
        return ReadingFault::Implausible;
    if (!last || !isGood(*last) || !last->fact.raw)
        return std::nullopt;
    // Two readings within one second are given that second: clocks and conversions are no finer.
    const double time = std::max(1.0, seconds(elapsed(last->at, now).time));
    const auto change = static_cast<double>(std::abs(value.count - last->fact.raw->count));
    if (change > time * static_cast<double>(rules.fastest.count))
        return ReadingFault::Jump;
    return std::nullopt;
}

double stability(std::span<const TakenReading> readings, const ProbeId& probe, const Stamp& now)
{
    std::vector<double> values;
    for (const TakenReading& reading : goodOnes(readings, now))
        if (reading.fact.probe == probe && elapsed(reading.at, now).time <= kStabilityWindow)
            values.push_back(celsius(reading));
    if (values.size() < 2)
        return 0;
    double squares = 0;
    for (const double value : values)
        squares += (value - mean(values)) * (value - mean(values));
    return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

bool ready(const BathRules& rules, std::span<const TakenReading> readings, const Stamp& now)
{
    const auto good = goodOnes(readings, now);
    for (std::size_t count = good.size(); count > 0; --count) {
        const std::span upToHere(good.data(), count);
        if (upToHere.back().fact.verdict != Verdict::Inside || !isSteady(upToHere, rules.steady))
            return false;
        if (elapsed(upToHere.back().at, good.back().at).time >= rules.settling)
            return true;
    }
    return false;
}

std::optional<TakenReading> standing(std::span<const TakenReading> readings, const Stamp& now,
                                     Millis tooOld)
{
    const auto good = goodOnes(readings, now);
    if (good.empty() || elapsed(good.back().at, now).time >= tooOld)
        return std::nullopt;
    return good.back();
}

}  // namespace bathside
