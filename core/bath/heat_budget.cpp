#include "core/bath/heat_budget.h"

#include <algorithm>
#include <cmath>

#include "core/bath/heat_matter.h"

namespace bathside {
namespace {

/// What the bath gives on its way from the start down to `celsius`, J.
double givenBy(const HeatBudget& budget, double celsius)
{
    return budget.bath.water * (waterEnthalpy(budget.start) - waterEnthalpy(celsius));
}

// Given and taken differ by a function that falls with the end's temperature: halved until it is
// known to 1e-10 °C.
double balanced(const HeatBudget& budget, int ampoules)
{
    double low = 0;
    double high = budget.start;
    for (int step = 0; step < 50; ++step) {
        const double middle = (low + high) / 2;
        const bool hasMore = givenBy(budget, middle) > ampoules * heatOfOne(budget, middle);
        (hasMore ? low : high) = middle;
    }
    return (low + high) / 2;
}

std::optional<double> recoveryOf(const WaterBath& bath, double heat)
{
    const double spare = bath.heater - bath.holding;
    return spare > 0 ? std::optional(heat / spare) : std::nullopt;
}

}  // namespace

double heatOfOne(const HeatBudget& budget, double celsius)
{
    const double contents = waterEnthalpy(celsius) - iceEnthalpy(budget.cryogen);
    return budget.ampoule.fill * contents +
           budget.ampoule.glass * budget.glassHeat * (celsius - budget.cryogen);
}

std::optional<BathDip> dipOf(const HeatBudget& budget, int ampoules)
{
    if (givenBy(budget, 0) < ampoules * heatOfOne(budget, 0))
        return std::nullopt;
    const double end = ampoules == 0 ? budget.start : balanced(budget, ampoules);
    const double heat = givenBy(budget, end);
    return BathDip{end, budget.start - end, heat, recoveryOf(budget.bath, heat)};
}

int mostAmpoules(const HeatBudget& budget, double lowest)
{
    if (budget.start < lowest)
        return 0;
    const double each = heatOfOne(budget, lowest);
    if (each <= 0)
        return kMostAmpoules;
    constexpr double kRounding = 1e-9;  // so that a bath made for n takes n
    const double most = std::floor(givenBy(budget, lowest) / each + kRounding);
    return static_cast<int>(std::clamp(most, 0.0, static_cast<double>(kMostAmpoules)));
}

double lowestInside(const Tolerance& tolerance, double expanded)
{
    return tolerance.target - tolerance.tolerance + tolerance.guard * expanded;
}

std::vector<CoursePoint> courseOf(const HeatBudget& budget, const BathDip& dip, double uptake,
                                  double step, double seconds)
{
    const double perKelvin = budget.bath.water * waterHeatCapacity(budget.start);
    const double spare = std::max(budget.bath.heater - budget.bath.holding, 0.0);
    std::vector<CoursePoint> course;
    const auto points = static_cast<std::size_t>(seconds / step) + 1;
    for (std::size_t i = 0; i < points; ++i) {
        const double t = static_cast<double>(i) * step;
        const double taken = dip.heat * (1 - std::exp(-t / uptake));
        const double lack = std::max(taken - spare * t, 0.0);
        course.push_back({t, budget.start - lack / perKelvin});
    }
    return course;
}

}  // namespace bathside
