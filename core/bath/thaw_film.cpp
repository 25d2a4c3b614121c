#include "core/bath/thaw_film.h"

#include <cmath>

#include "core/base/piecewise.h"

namespace bathside {

Fluid waterAt(double celsius)
{
    static const Piecewise viscosity(
        {{0, 1.792e-6}, {10, 1.307e-6}, {20, 1.004e-6}, {30, 0.801e-6}, {40, 0.658e-6}});
    static const Piecewise conductivity(
        {{0, 0.561}, {10, 0.580}, {20, 0.598}, {30, 0.615}, {40, 0.631}});
    static const Piecewise prandtl({{0, 13.5}, {10, 9.45}, {20, 7.01}, {30, 5.42}, {40, 4.34}});
    return {viscosity.at(celsius), conductivity.at(celsius), prandtl.at(celsius)};
}

double crossFlowFilm(const Fluid& fluid, double speed, double diameter)
{
    const double reynolds = speed * diameter / fluid.viscosity;
    const double pr = fluid.prandtl;
    const double nusselt = 0.3 + 0.62 * std::sqrt(reynolds) * std::cbrt(pr) /
                                     std::pow(1 + std::pow(0.4 / pr, 2.0 / 3), 0.25) *
                                     std::pow(1 + std::pow(reynolds / 282'000, 5.0 / 8), 0.8);
    return nusselt * fluid.conductivity / diameter;
}

Interval plausibleFilm(double celsius, double diameter)
{
    const Fluid water = waterAt(3 * celsius / 4);  // between the bath's and the glass's
    return {crossFlowFilm(water, kSwirl.low, diameter),
            crossFlowFilm(water, kSwirl.high, diameter)};
}

}  // namespace bathside
