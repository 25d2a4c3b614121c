#pragma once

// What cold ampoules do to a bath: how far it dips, how long it takes to come back, how many it can
// take.
//
// The dip is that of a closed bath (no heater, no losses), so the bath never falls further;
// contents are reckoned as pure ice, melt and water, which takes 5 to 10 % more heat than a
// cryoprotected medium. The heater gives back the same heat at its power less what holding the bath
// takes: the time to recover is from immersion to the starting temperature with the heater on
// throughout, not counting its delay. Energy balance exact; the figures are as good as masses and
// `glassHeat` are. (Spec: temperatures, heat budget.)

#include <optional>
#include <vector>

#include "core/bath/probe.h"

namespace bathside {

struct ColdAmpoule {
    double fill = 0;   // kg of contents
    double glass = 0;  // kg
};

struct WaterBath {
    double water = 0;    // kg, the water's own or the fitted effective mass; > 0
    double heater = 0;   // W at full power
    double holding = 0;  // W that keep it at temperature
};

struct HeatBudget {
    ColdAmpoule ampoule;
    WaterBath bath;
    double start = 0;      // °C of the bath, corrected, above 0
    double cryogen = 0;    // °C of the ampoules, at or below 0
    double glassHeat = 0;  // J/(kg K)
};

/// J that warm one ampoule from the cryogen's temperature to `celsius`, at or above 0 °C.
[[nodiscard]] double heatOfOne(const HeatBudget& budget, double celsius);

struct BathDip {
    double end = 0;                  // °C, at or above 0
    double depth = 0;                // °C
    double heat = 0;                 // J taken
    std::optional<double> recovery;  // s; none: the heater has nothing to spare
};

/// None: so many ampoules that the bath itself would freeze.
[[nodiscard]] std::optional<BathDip> dipOf(const HeatBudget& budget, int ampoules);

/// The largest number that leaves the bath at or above `lowest`, °C from 0 on; 0 where it starts
/// below. At most `kMostAmpoules`.
inline constexpr int kMostAmpoules = 1000;
[[nodiscard]] int mostAmpoules(const HeatBudget& budget, double lowest);

/// The lowest temperature at which the bath still counts as inside, for an expanded uncertainty.
[[nodiscard]] double lowestInside(const Tolerance& tolerance, double expanded);

struct CoursePoint {
    double seconds = 0;
    double celsius = 0;
};

/// The bath's temperature from immersion on, every `step` s for `seconds`: the heat goes over with
/// the time constant `uptake`, s, and the heater works until the start is reached again. For a
/// picture; its lowest point lies above the closed bath's.
[[nodiscard]] std::vector<CoursePoint> courseOf(const HeatBudget& budget, const BathDip& dip,
                                                double uptake, double step, double seconds);

}  // namespace bathside
