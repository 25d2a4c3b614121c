#pragma once

// How an ampoule thaws in a bath: heat in one dimension, radially, through film, glass and
// contents.
//
// Finite volumes on enthalpy with explicit steps within their stability bound, so that heat is kept
// to rounding whatever melts. The film coefficient holds at the glass's outside; the round bottom
// joins in by its share of the surface, which is all that the filling height does. Contents do not
// flow; what stands above them is left out. Units: m, s, °C, J, W. 20 rings come within
// 0.5 % of the limit of fine rings. That slush is a sliver of ice is common practice; that a sliver
// is 5 % is ours, and film and sliver go together: with 10 % the fitted film is less than half.
// (Spec: temperatures, thaw time.)

#include <optional>
#include <vector>

#include "core/bath/thaw_medium.h"

namespace bathside {

struct AmpouleShape {
    double diameter = 0;  // m, outside
    double wall = 0;      // m of glass; 0: none
    double fill = 0;      // m³ of contents; 0: a cylinder without ends
    friend bool operator==(const AmpouleShape&, const AmpouleShape&) = default;
};

struct ThawSetting {
    AmpouleShape shape;
    ThawMedium contents;
    double start = 0;        // °C of ampoule and contents
    double bath = 0;         // °C
    double film = 0;         // W/(m² K)
    double slushIce = 0.05;  // share of the ice at the start that is left as slush
    int rings = 20;          // of the contents
    double longest = 1'200;  // s after which it is given up
};

struct ThawPoint {
    double seconds = 0;
    double ice = 0;     // share of the ice at the start
    double centre = 0;  // °C, of the innermost ring
    double mean = 0;    // °C at which the contents would be if they were even
};

struct Thaw {
    std::optional<double> slush;    // s; none: not within `longest`
    std::vector<ThawPoint> course;  // about every half second until slush
    double heatIn = 0;              // J per m of length through the film until the end
    double heatKept = 0;            // J per m more in glass and contents than at the start
};

/// Until slush, or for `longest`. Asserts that the contents fill a cylinder: the wall is less than
/// the radius.
[[nodiscard]] Thaw thawed(const ThawSetting& setting);

/// The whole of `seconds`, for looking at more than slush.
[[nodiscard]] Thaw warmedFor(const ThawSetting& setting, double seconds);

}  // namespace bathside
