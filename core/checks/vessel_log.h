#pragma once

// A cryogen vessel as the station keeps it: what it is held to, and what its dipstick showed.
//
// The description is one document: `{"name": "A", "dipstick": [{"mm": 0, "litres": 0}, …],
// "minimum_litres": 8, "usual_litres_per_day": 0.3, "alarm_factor": 1.5, "room": {"m3": 60,
// "air_changes_per_hour": 2}}`; the room may be left out. Rate, next fill and vacuum:
// vessel_case.h.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/ids.h"
#include "core/base/time.h"
#include "core/checks/vessel_case.h"

namespace bathside {

struct VesselRoom {
    double cubicMetres = 0;
    double airChanges = 0;  // an hour
};

struct Vessel {
    std::string name;
    Dipstick dipstick;
    double minimum = 0;  // L
    double usual = 0;    // L/day
    double alarm = 0;    // L/day, from which the loss is too high
    std::optional<VesselRoom> room;
};

[[nodiscard]] Result<Vessel, DocumentFault> vesselFrom(std::string_view document);

struct Dip {
    WallTime at{};
    std::int64_t millimetres = 0;
    bool filled = false;  // cryogen was added since the one before
    Seq seq = 0;
};

struct VesselLog {
    std::optional<Vessel> vessel;
    std::vector<Dip> dips;  // by time

    /// None without a description, or where the dipstick showed nothing that its table holds.
    [[nodiscard]] std::optional<VesselAnswer> answer() const;
};

}  // namespace bathside
