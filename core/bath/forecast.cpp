#include "core/bath/forecast.h"

#include <algorithm>

namespace bathside {
namespace {

constexpr double kShortest = 120;    // s
constexpr double kAfterwards = 1.3;  // of the longest recovery
constexpr double kCourseStep = 2;    // s between points of a course
constexpr double kCurveApart = 2;    // °C between points of the slush curve

double asCelsius(MilliCelsius value) { return static_cast<double>(value.count) / 1000; }

double lastRecovery(const std::vector<PullForecast>& pulls)
{
    double longest = 0;
    for (const PullForecast& pull : pulls) {
        if (pull.dip && pull.dip->recovery)
            longest = std::max(longest, *pull.dip->recovery);
    }
    return longest;
}

}  // namespace

BathForecast forecastOf(const HeatRules& heat, const BathRules& bath, const BathNow& now,
                        int ampoules)
{
    const HeatBudget budget = budgetOf(heat, now.celsius);
    BathForecast all{.tolerance = toleranceOf(bath), .pulls = {}};
    all.lowest = lowestInside(all.tolerance, now.expanded);
    all.highest =
        all.tolerance.target + all.tolerance.tolerance - all.tolerance.guard * now.expanded;
    const bool startsInside = now.celsius >= all.lowest && now.celsius <= all.highest;
    all.most = startsInside ? mostAmpoules(budget, all.lowest) : 0;
    for (int n = 1; n <= ampoules; ++n)
        all.pulls.push_back(
            {.ampoules = n, .dip = dipOf(budget, n), .staysInside = n <= all.most, .course = {}});
    all.seconds = std::max(kShortest, kAfterwards * lastRecovery(all.pulls));
    HeatBudget unheated = budget;
    unheated.bath.heater = 0;
    const double uptake = static_cast<double>(heat.uptakeMs) / 1000;
    for (PullForecast& pull : all.pulls) {
        if (!pull.dip)
            continue;
        pull.course = courseOf(budget, *pull.dip, uptake, kCourseStep, all.seconds);
        pull.unheated = courseOf(unheated, *pull.dip, uptake, kCourseStep, all.seconds);
    }
    return all;
}

std::vector<SlushPoint> slushCurve(const HeatRules& heat)
{
    std::vector<SlushPoint> curve;
    const double last = asCelsius(heat.cueHighest);
    for (double bath = asCelsius(heat.cueLowest); bath < last + kCurveApart; bath += kCurveApart) {
        const double here = std::min(bath, last);
        if (const auto slush = thawed(thawSettingOf(heat, here)).slush)
            curve.push_back({here, *slush});
    }
    return curve;
}

}  // namespace bathside
