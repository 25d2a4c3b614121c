#pragma once

// One heat budget as the command line takes it in and gives it out: JSON in g, kg, W, °C.
//
// `{"ampoules": 3, "ampoule": {"fill_g": 2, "glass_g": 3}, "bath": {"water_kg": 4, "heater_w": 800,
// "holding_w": 60}, "start_c": 28, "target_c": 28, "tolerance_c": 1, "guard": 1, "expanded_u_c":
// 0.1, "dips": [{"ampoules": 3, "start_c": 28.0, "end_c": 27.7}]}`. `water_kg` may be left out
// where `dips` give the effective mass; `dips`, `holding_w` (0), `guard` (1), `expanded_u_c` (0),
// `cryogen_c` (nitrogen boiling) and `glass_j_per_g_k` (0.6) may be left out.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/bath/heat_fit.h"
#include "core/card/fault.h"

namespace bathside {

struct HeatCase {
    HeatBudget budget;  // its bath's water as given, or as fitted
    int ampoules = 0;
    Tolerance tolerance;
    double expanded = 0;  // °C, k = 2
    std::optional<MassFit> fit;
};

struct HeatAnswer {
    std::optional<BathDip> dip;  // none: the bath would freeze
    double lowest = 0;           // °C at which the bath is still inside
    bool staysInside = false;
    int most = 0;      // ampoules with which it does
    double water = 0;  // kg reckoned with
    std::optional<MassFit> fit;
};

[[nodiscard]] Result<HeatCase, DocumentFault> heatCaseFrom(std::string_view document);
[[nodiscard]] HeatAnswer answered(const HeatCase& heat);
/// One object in one line.
[[nodiscard]] std::string toJson(const HeatAnswer& answer);

}  // namespace bathside
