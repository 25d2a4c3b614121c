#pragma once

// What pulls of one to several ampoules will do to this bath, and how the time to slush goes with
// its temperature: what set-up shows before there is any pull.
//
// Calculations from the card's bath and ampoules; the thermometer decides. (Spec: temperatures,
// heat budget and thaw time.)

#include <optional>
#include <vector>

#include "core/bath/card_heat.h"
#include "core/bath/heat_budget.h"

namespace bathside {

struct BathNow {
    double celsius = 0;   // corrected
    double expanded = 0;  // U at k = 2
};

struct PullForecast {
    int ampoules = 0;
    std::optional<BathDip> dip;  // none: the bath itself would freeze
    bool staysInside = false;
    std::vector<CoursePoint> course{};    // with the heater on throughout; empty without a dip
    std::vector<CoursePoint> unheated{};  // with the heater off: the deepest it can be
};

struct BathForecast {
    Tolerance tolerance;
    double lowest = 0,
           highest = 0;  // between these it counts as inside; crossed where U is too large
    int most = 0;        // ampoules at a time
    std::vector<PullForecast> pulls;  // of 1, 2, … ampoules
    double seconds = 0;               // that the courses go on
};

/// Of 1 to `ampoules` at a time.
[[nodiscard]] BathForecast forecastOf(const HeatRules& heat, const BathRules& bath,
                                      const BathNow& now, int ampoules);

struct SlushPoint {
    double celsius = 0;  // of the bath
    double seconds = 0;  // from *in bath* until slush
};

/// Common practice, no published source: what the model is held to.
inline constexpr SlushPoint kUsualSlush{28, 80};

/// Over the range in which the card's cue follows the bath, every 2 °C and at its end; without
/// those at which nothing thaws. Some ms a point.
[[nodiscard]] std::vector<SlushPoint> slushCurve(const HeatRules& heat);

}  // namespace bathside
