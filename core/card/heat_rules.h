#pragma once

// The bench's own bath and ampoules, for what is predicted of them: a card's section `heat`.
//
// Whole numbers in the units of their names. Optional as a whole and key by key; the defaults are
// from memory, but for the film, which gives the usual 80 s at 28 °C (common practice).

#include <cstdint>

#include "core/base/units.h"

namespace bathside {

struct HeatRules {
    std::int64_t waterGrams = 10'000;  // of the bath, or its fitted effective mass
    std::int64_t heaterWatts = 1'000;
    std::int64_t holdingWatts = 60;  // that keep the bath at its temperature
    std::int64_t uptakeMs = 25'000;  // time constant with which ampoules take their heat
    MicroLitres fill{2'000};
    std::int64_t glassMilligrams = 3'000;
    std::int64_t diameterMicrometres = 10'750;  // outside
    std::int64_t wallMicrometres = 500;
    MilliCelsius freezing{-3'600};   // of the contents
    std::int64_t film = 1'900;       // W/(m² K), between water and glass
    MilliCelsius cueLowest{20'000};  // of the bath: between these the cue for slush follows it
    MilliCelsius cueHighest{40'000};
    friend bool operator==(const HeatRules&, const HeatRules&) = default;
};

}  // namespace bathside
