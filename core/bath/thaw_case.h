#pragma once

// One thaw as the command line takes it in and gives it out: JSON in mm, mL, s, °C.
//
// `{"bath_c": 28, "ampoule": {"diameter_mm": 10.75, "wall_mm": 0.5, "fill_ml": 2}, "film_w_m2k":
// 1900, "limit_s": 90, "handling_s": 8, "logs": [{"bath_c": 28, "slush_s": 80}]}`. Instead of a
// film coefficient `logs` may stand, from which it is fitted; a log may have an `ampoule` of its
// own. `handling_s` (0), `start_c` (nitrogen boiling), `slush_ice` (the model's) and `freezing_c`
// (the medium's) may be left out.

#include <optional>
#include <string>
#include <string_view>

#include "core/bath/thaw_fit.h"
#include "core/card/fault.h"

namespace bathside {

struct ThawCase {
    ThawSetting setting;
    Millis limit{};
    Millis handling{};
    std::optional<FilmFit> fit;
};

struct ThawAnswer {
    std::optional<double> slush;  // s; none: not within the model's longest time
    Millis cue{};                 // when to look for slush
    bool beforeLimit = false;     // slush and handling are done before the limit
    double film = 0;              // W/(m² K)
    Interval plausible;           // of a published correlation
    double imbalance = 0;         // of heat, as a share of what went in
    std::optional<FilmFit> fit;
};

[[nodiscard]] Result<ThawCase, DocumentFault> thawCaseFrom(std::string_view document);
[[nodiscard]] ThawAnswer answered(const ThawCase& thaw);
/// One object in one line.
[[nodiscard]] std::string toJson(const ThawAnswer& answer);

}  // namespace bathside
