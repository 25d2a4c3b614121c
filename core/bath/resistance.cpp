#include "core/bath/resistance.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace bathside {
namespace {

// IEC 60751, platinum of industrial grade.
constexpr double kA = 3.9083e-3;    // 1/°C
constexpr double kB = -5.775e-7;    // 1/°C²
constexpr double kC = -4.183e-12;   // 1/°C⁴
constexpr double kLowest = -200;    // °C
constexpr double kHighest = 850;    // °C
constexpr double kZero = 273.15;    // K at 0 °C
constexpr double kRounding = 1e-9;  // °C, so that a range's own ends lie within it
constexpr double kTableEnd = 0.01;  // °C: the standard's table has its own ends to 0.01 Ω
constexpr double kLeastOhm = 1;     // that a thermistor is looked for between
constexpr double kMostOhm = 1e7;

double ratioAt(double t)
{
    const double above = 1 + kA * t + kB * t * t;
    return t >= 0 ? above : above + kC * (t - 100) * t * t * t;
}

double slopeAt(double t)  // below 0 °C
{
    return kA + 2 * kB * t + kC * (4 * t * t * t - 300 * t * t);
}

double fromQuadratic(double ratio)
{
    return (-kA + std::sqrt(kA * kA - 4 * kB * (1 - ratio))) / (2 * kB);
}

// Newton from the quadratic, which is at most 2.4 °C off: four steps leave less than 1e-9 °C.
double belowZero(double ratio)
{
    double t = fromQuadratic(ratio);
    for (int step = 0; step < 4; ++step)
        t -= (ratioAt(t) - ratio) / slopeAt(t);
    return t;
}

Result<double, ReadingFault> celsius(const Platinum& element, double ohm)
{
    const double ratio = ohm / element.ohmAtZero;
    if (ratio < ratioAt(kLowest - kTableEnd))
        return failure(ReadingFault::Shorted);
    if (ratio > ratioAt(kHighest + kTableEnd))
        return failure(ReadingFault::OpenLine);
    return ratio >= 1 ? fromQuadratic(ratio) : belowZero(ratio);
}

double inverseKelvin(const Thermistor& element, double log)
{
    return element.a + log * (element.b + element.c * log * log);
}

Result<double, ReadingFault> celsius(const Thermistor& element, double ohm)
{
    if (ohm == 0)
        return failure(ReadingFault::Shorted);
    const double celsius = 1 / inverseKelvin(element, std::log(ohm)) - kZero;
    if (!(celsius <= element.highest + kRounding))
        return failure(ReadingFault::Shorted);
    if (celsius < element.lowest - kRounding)
        return failure(ReadingFault::OpenLine);
    return celsius;
}

// d(1/T)/d(ln R): above 0 where resistance falls as temperature rises.
bool fallsAt(const Thermistor& element, double log)
{
    return element.b + 3 * element.c * log * log > 0;
}

bool isPoint(const ThermistorPoint& point) { return point.ohm > 0 && point.celsius > -kZero; }

}  // namespace

Result<double, ReadingFault> celsiusOf(const ResistanceElement& element, double ohm)
{
    if (std::isinf(ohm) && ohm > 0)
        return failure(ReadingFault::OpenLine);
    if (!(ohm >= 0))
        return failure(ReadingFault::Unreadable);
    return std::visit([&](const auto& one) { return celsius(one, ohm); }, element);
}

double ohmOf(const Platinum& element, double celsius)
{
    assert(kLowest <= celsius && celsius <= kHighest);
    return element.ohmAtZero * ratioAt(celsius);
}

// By halving: 1/T rises with ln R all the way, and a hundred halvings leave no more than rounding.
std::optional<double> ohmOf(const Thermistor& element, double celsius)
{
    double low = std::log(kLeastOhm), high = std::log(kMostOhm);
    const double wanted = 1 / (celsius + kZero);
    const bool falls = fallsAt(element, low) && fallsAt(element, high);
    if (!falls || wanted < inverseKelvin(element, low) || wanted > inverseKelvin(element, high))
        return std::nullopt;
    for (int i = 0; i < 100; ++i) {
        const double middle = (low + high) / 2;
        (inverseKelvin(element, middle) < wanted ? low : high) = middle;
    }
    return std::exp(low);
}

// The three equations, linear in A, B and C, by divided differences.
Result<Thermistor, ThermistorFault> thermistorFrom(std::array<ThermistorPoint, 3> points)
{
    if (!std::ranges::all_of(points, isPoint))
        return failure(ThermistorFault::NoResistance);
    std::ranges::sort(points, {}, &ThermistorPoint::celsius);
    std::array<double, 3> log{};
    std::array<double, 3> inverse{};
    for (std::size_t i = 0; i < points.size(); ++i) {
        log.at(i) = std::log(points.at(i).ohm);
        inverse.at(i) = 1 / (points.at(i).celsius + kZero);
    }
    if (!(log[0] > log[1] && log[1] > log[2]) ||
        !(inverse[0] > inverse[1] && inverse[1] > inverse[2]))
        return failure(ThermistorFault::NotFalling);
    const double first = (inverse[1] - inverse[0]) / (log[1] - log[0]);
    const double second = (inverse[2] - inverse[0]) / (log[2] - log[0]);
    Thermistor found;
    found.c = (second - first) / (log[2] - log[1]) / (log[0] + log[1] + log[2]);
    found.b = first - found.c * (log[0] * log[0] + log[0] * log[1] + log[1] * log[1]);
    found.a = inverse[0] - log[0] * (found.b + found.c * log[0] * log[0]);
    found.lowest = points[0].celsius;
    found.highest = points[2].celsius;
    if (!std::isfinite(found.c) || !fallsAt(found, log[0]) || !fallsAt(found, log[2]))
        return failure(ThermistorFault::NotFalling);
    return found;
}

}  // namespace bathside
