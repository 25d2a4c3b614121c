#pragma once

// One injector check as the command line takes it in and gives it out: JSON in mL, mg, %.
//
// One of three measures: `{"weights_mg": [199.2, …], "liquid": {"water_c": 22}}` or `"liquid":
// {"density_g_ml": 1.005}`, with `"air": {"celsius": 22, "hpa": 1013, "humidity": 50}` (these
// values where it is left out); `{"volumes_ml": [0.199, …]}`; `{"cylinder": {"shots": 10,
// "collected_ml": 2.05, "graduation_ml": 0.1}}`. To each `"dose_ml": 0.2, "limits":
// {"systematic_percent": 5, "random_percent": 5}` and, if wanted, `"confidence": 0.95`.

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/card/fault.h"
#include "core/checks/injector.h"

namespace bathside {

struct InjectorCase {
    double dose = 0;  // mL
    DoseErrors errors;
    DoseLimits limits;
    std::optional<double> factor;  // mL/g, where shots were weighed
};

[[nodiscard]] Result<InjectorCase, DocumentFault> injectorCaseFrom(std::string_view document);
[[nodiscard]] JudgedDose judged(const InjectorCase& check);
/// One object in one line.
[[nodiscard]] std::string toJson(const InjectorCase& check);

}  // namespace bathside
