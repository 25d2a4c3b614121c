#include "core/bath/thaw_medium.h"

#include <algorithm>

#include "core/bath/heat_matter.h"

namespace bathside {
namespace {

constexpr double kColdest = -200;     // °C
constexpr double kWarmest = 100;      // °C
constexpr double kIceAtZero = 2.2;    // W/(m K) at 0 °C, falling as 1/T (K); from memory
constexpr double kIcePoint = 273.15;  // K

double iceShare(const Cryoprotected& contents, double celsius)
{
    if (celsius >= contents.freezing)
        return 0;
    return 1 - contents.freezing / std::max(celsius, contents.glass);
}

// What stays unfrozen warms as water does, and as ice does once it is glass.
double unfrozenEnthalpy(const Cryoprotected& contents, double celsius)
{
    if (celsius >= contents.glass)
        return waterEnthalpy(celsius);
    return waterEnthalpy(contents.glass) + iceEnthalpy(celsius) - iceEnthalpy(contents.glass);
}

ThawRow rowAt(const Cryoprotected& contents, double celsius)
{
    const double ice = contents.water * iceShare(contents, celsius);
    const double unfrozen = contents.water - ice;
    const double ofIce = ice > 0 ? ice * iceEnthalpy(celsius) : 0;
    const double iceConductivity = kIceAtZero * kIcePoint / (celsius + kIcePoint);
    return {celsius,
            ofIce + unfrozen * unfrozenEnthalpy(contents, celsius) +
                (1 - contents.water) * contents.soluteHeat * celsius,
            ice * iceConductivity + (1 - ice) * contents.conductivity, ice};
}

// Close together where the ice melts, wide apart elsewhere.
double stepAt(const Cryoprotected& contents, double celsius)
{
    const double away = celsius / contents.freezing;  // 1 at the freezing point
    return away < 1 ? 1.0 : std::clamp(0.02 * away * away, 0.02, 2.0);
}

}  // namespace

ThawMedium cryoprotected(const Cryoprotected& contents)
{
    ThawMedium medium{contents.density, {}};
    for (double t = kColdest; t < contents.freezing; t += stepAt(contents, t))
        medium.rows.push_back(rowAt(contents, t));
    for (double t = contents.freezing; t <= kWarmest; t += 1)
        medium.rows.push_back(rowAt(contents, t));
    return medium;
}

}  // namespace bathside
