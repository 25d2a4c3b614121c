#pragma once

// A room's oxygen as the command line takes it in and gives it out.
//
// `{"room_m3": 36, "litres": 10, "litres_per_day": 0.75, "air_changes_per_h": 0.4, "expansion":
// 700, "base_percent": 20.95}`; the last four may be left out, `litres_per_day` and
// `air_changes_per_h` only together. A closed room has 0 air changes.

#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/card/fault.h"
#include "core/checks/room_air.h"

namespace bathside {

struct RoomAirCase {
    BoilOff boilOff;
    std::optional<double> litresPerDay;
    double airChanges = 0;  // an hour
};

struct RoomAirAnswer {
    double atOnce = 0;                    // %, worst case
    double mixed = 0;                     // %
    AirCaution caution{};                 // of the worst case
    double litresToWarning = 0;           // L, all at once
    double litresToLeave = 0;             // L
    std::optional<double> ventilated;     // %, while it boils off steadily
    std::optional<double> daysToWarning;  // in a closed room; none: it is aired
};

[[nodiscard]] Result<RoomAirCase, DocumentFault> roomAirCaseFrom(std::string_view document);
[[nodiscard]] RoomAirAnswer answered(const RoomAirCase& room);
/// One object in one line.
[[nodiscard]] std::string toJson(const RoomAirAnswer& answer);

}  // namespace bathside
