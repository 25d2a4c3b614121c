#pragma once

// What an ampoule holds, as the thaw model needs it: enthalpy, conductivity and ice by temperature.
//
// A medium is a table, straight between its rows. `cryoprotected` builds the one for cells in a
// watery medium with a cryoprotectant: below its freezing point Tf the share of its water that is
// ice is 1 − Tf / T (ideal dilution, T in °C), down to where the rest sets as glass. Water and ice
// are those of `heat_matter.h`; freezing at −3 to −4 °C is from osmolality (10 % DMSO with salts,
// computed); the other constants are from memory, of medium confidence, and stand in the source.

#include <vector>

namespace bathside {

struct ThawRow {
    double celsius = 0;
    double enthalpy = 0;      // J/kg, rising strictly with temperature
    double conductivity = 0;  // W/(m K)
    double ice = 0;           // kg of ice in a kg of contents
};

struct ThawMedium {
    double density = 0;         // kg/m³, one for all states, so that mass stays where it is
    std::vector<ThawRow> rows;  // by rising temperature; two at least
};

struct Cryoprotected {
    double water = 0.86;         // kg in a kg
    double freezing = -3.6;      // °C, below 0
    double glass = -60;          // °C at which the unfrozen rest sets
    double soluteHeat = 1'700;   // J/(kg K)
    double conductivity = 0.55;  // W/(m K), liquid
    double density = 1'020;      // kg/m³
};

/// From −200 to 100 °C.
[[nodiscard]] ThawMedium cryoprotected(const Cryoprotected& contents = {});

}  // namespace bathside
