#pragma once

// The film coefficient that water flowing across an ampoule should have: what a fitted one must be
// near.
//
// Churchill & Bernstein, J. Heat Transfer 99 (1977) 300, for a cylinder in cross-flow, Re·Pr > 0.2;
// formula from memory, checked against a textbook's worked example. Good to about 20 %. Properties
// of water at the film temperature from handbook values at 0 to 40 °C, from memory, straight
// between them.

#include "core/base/quantiles.h"

namespace bathside {

struct Fluid {
    double viscosity = 0;     // m²/s, kinematic
    double conductivity = 0;  // W/(m K)
    double prandtl = 0;
};

/// 0 to 40 °C; the end's values beyond.
[[nodiscard]] Fluid waterAt(double celsius);

/// Nu·k/d, W/(m² K); `speed` in m/s and `diameter` in m above 0.
[[nodiscard]] double crossFlowFilm(const Fluid& fluid, double speed, double diameter);

/// How fast a swirled ampoule moves through the water, m/s: from hardly to briskly. Common
/// practice, no published source.
inline constexpr Interval kSwirl{0.02, 0.5};

/// The film coefficients of `kSwirl` in a bath at `celsius`, with the glass half way to 0 °C.
[[nodiscard]] Interval plausibleFilm(double celsius, double diameter);

}  // namespace bathside
