#pragma once

// What was weighed or collected at an injector, as the document that the trail keeps of it
// (injector_case.h), whole and with its limits, so that it can be judged again.
//
// Whole numbers in small units, as they are typed or sent by a balance. (Spec: checks, dose check.)

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "core/base/units.h"
#include "core/checks/injector.h"

namespace bathside {

/// ISO 8655-6 asks for ten measurements of each volume.
inline constexpr std::size_t kShotsAsked = 10;
inline constexpr std::size_t kFewestShots = 2;  // one has no spread

struct Water {
    MilliCelsius temperature{22'000};
};
/// kg/m³, as its label says.
struct OtherLiquid {
    std::int64_t density = 1'000;
};
using ShotLiquid = std::variant<Water, OtherLiquid>;

struct WeighedShots {
    std::vector<std::int64_t> tenthsOfMilligram;
    ShotLiquid liquid;
};

/// All shots together in a graduated cylinder; `graduation`: between two of its marks.
struct CollectedShots {
    std::int64_t shots = 0;
    MicroLitres collected, graduation;
};

struct DoseMeasured {
    MicroLitres dose;  // that is set
    std::variant<WeighedShots, CollectedShots> how;
    DoseLimits limits = kUsualDoseLimits;
};

[[nodiscard]] std::string documentOf(const DoseMeasured& measured);

}  // namespace bathside
