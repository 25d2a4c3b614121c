#include "core/bath/heat_matter.h"

#include "core/base/piecewise.h"

namespace bathside {
namespace {

const Piecewise& iceHeat()
{
    static const Piecewise table({{-195.8, 688.7},
                                  {-175, 859.8},
                                  {-150, 1043.4},
                                  {-125, 1213.7},
                                  {-100, 1382.7},
                                  {-75, 1555.4},
                                  {-50, 1732.6},
                                  {-25, 1913.3},
                                  {-10, 2023.1},
                                  {0, 2096.7}});
    return table;
}

const Piecewise& waterHeat()
{
    static const Piecewise table({{0, 4219.4},
                                  {10, 4195.1},
                                  {20, 4184.1},
                                  {25, 4181.3},
                                  {27, 4180.6},
                                  {30, 4179.8},
                                  {37, 4179.2},
                                  {40, 4179.4}});
    return table;
}

}  // namespace

double iceHeatCapacity(double celsius) { return iceHeat().at(celsius); }
double waterHeatCapacity(double celsius) { return waterHeat().at(celsius); }

double iceEnthalpy(double celsius) { return iceHeat().integral(0, celsius) - kMeltHeat; }
double waterEnthalpy(double celsius) { return waterHeat().integral(0, celsius); }

double waterDensity(double t)
{
    constexpr double kA1 = -3.983035;   // °C
    constexpr double kA2 = 301.797;     // °C
    constexpr double kA3 = 522'528.9;   // °C²
    constexpr double kA4 = 69.34881;    // °C
    constexpr double kA5 = 999.974950;  // kg/m³
    return kA5 * (1 - (t + kA1) * (t + kA1) * (t + kA2) / (kA3 * (t + kA4)));
}

}  // namespace bathside
