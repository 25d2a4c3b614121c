#include "core/bath/heat_fit.h"

#include <cmath>

#include "core/bath/heat_matter.h"

namespace bathside {
namespace {

/// °C that the dip would be for 1 kg.
double ofOneKilogram(const HeatBudget& budget, const LoggedDip& dip)
{
    const double heat = dip.ampoules * heatOfOne(budget, dip.end);
    return heat / waterHeatCapacity((dip.start + dip.end) / 2);
}

std::optional<Interval> massInterval(double inverse, double squares, double residuals,
                                     std::size_t dips)
{
    if (dips < 2)
        return std::nullopt;
    const auto degrees = static_cast<double>(dips - 1);
    const double half =
        studentQuantile(upperTail(0.95), degrees) * std::sqrt(residuals / degrees / squares);
    if (inverse - half <= 0)
        return std::nullopt;
    return Interval{1 / (inverse + half), 1 / (inverse - half)};
}

}  // namespace

Result<MassFit, FitFault> fittedMass(const HeatBudget& budget, const std::vector<LoggedDip>& dips)
{
    double products = 0;
    double squares = 0;
    for (const LoggedDip& dip : dips) {
        const double x = ofOneKilogram(budget, dip);
        products += x * (dip.start - dip.end);
        squares += x * x;
    }
    if (squares <= 0)
        return failure(FitFault::NoData);
    if (products <= 0)
        return failure(FitFault::NoDip);

    const double inverse = products / squares;
    MassFit fit;
    fit.mass = 1 / inverse;
    double residuals = 0;
    for (const LoggedDip& dip : dips) {
        fit.predicted.push_back(inverse * ofOneKilogram(budget, dip));
        residuals += std::pow(fit.predicted.back() - (dip.start - dip.end), 2);
    }
    fit.rms = std::sqrt(residuals / static_cast<double>(dips.size()));
    fit.interval = massInterval(inverse, squares, residuals, dips.size());
    return fit;
}

}  // namespace bathside
