#include "core/checks/injector.h"

#include <cmath>

namespace bathside {
namespace {

constexpr double kWeights = 8'000;  // kg/m³, conventional density of the balance's weights
constexpr double kSlack = 1e-9;     // %

double percentOf(double dose, double mean) { return 100 * (mean - dose) / dose; }

bool isWithin(double percent, double limit) { return std::abs(percent) <= limit + kSlack; }

bool isOutside(const Interval& interval, double dose, double limit)
{
    return percentOf(dose, interval.high) < -limit || percentOf(dose, interval.low) > limit;
}

bool isInside(const Interval& interval, double dose, double limit)
{
    return isWithin(percentOf(dose, interval.low), limit) &&
           isWithin(percentOf(dose, interval.high), limit);
}

}  // namespace

double airDensity(double celsius, double hectopascals, double humidity)
{
    return (0.34848 * hectopascals - 0.009 * humidity * std::exp(0.061 * celsius)) /
           (273.15 + celsius);
}

double weighingFactor(double density, double airDensity)
{
    constexpr double kPerGram = 1'000;  // (m³/kg) in mL/g
    return kPerGram * (1 - airDensity / kWeights) / (density - airDensity);
}

DoseErrors errorsOf(std::span<const double> volumes, double dose, double confidence)
{
    const Sample sample = sampleOf(volumes);
    DoseErrors errors;
    errors.shots = sample.count;
    errors.mean = sample.mean;
    errors.systematic = sample.mean - dose;
    errors.systematicPercent = percentOf(dose, sample.mean);
    errors.interval = meanInterval(sample, confidence);
    if (sample.count > 1) {
        errors.random = sample.deviation;
        errors.randomPercent = 100 * sample.deviation / sample.mean;
    }
    return errors;
}

DoseErrors errorsInCylinder(int shots, double collected, double graduation, double dose)
{
    DoseErrors errors;
    errors.shots = static_cast<std::size_t>(shots);
    errors.mean = collected / shots;
    errors.systematic = errors.mean - dose;
    errors.systematicPercent = percentOf(dose, errors.mean);
    const double half = graduation / 2 / shots;
    errors.interval = Interval{errors.mean - half, errors.mean + half};
    return errors;
}

JudgedDose judged(const DoseErrors& errors, double dose, const DoseLimits& limits)
{
    const bool scatters =
        errors.randomPercent && !isWithin(*errors.randomPercent, limits.randomPercent);
    const bool isOff = !isWithin(errors.systematicPercent, limits.systematicPercent);
    const double limit = limits.systematicPercent;
    const bool sideIsSure = errors.interval && (isInside(*errors.interval, dose, limit) ||
                                                isOutside(*errors.interval, dose, limit));
    return {scatters || isOff ? DoseVerdict::Failed : DoseVerdict::Good, scatters || sideIsSure};
}

}  // namespace bathside
