#pragma once

// A vessel's log as the command line takes it in and gives it out.
//
// `{"dipstick": [{"mm": 0, "litres": 0}, {"mm": 500, "litres": 30}], "log": [{"at":
// "2026-03-01T07:00:00+01:00", "mm": 450}, {"at": …, "mm": 470, "after_fill": true}],
// "minimum_litres": 8, "usual_litres_per_day": 0.3, "alarm_factor": 1.5, "recent_days": 14,
// "confidence": 0.95}`, the log by time. The rate is taken from the readings of the last
// `recent_days` (all where it is left out); too high is more than `alarm_factor` (1.5; ours, no
// published value) times the usual rate. A loss of late that is too high counts beside it, and a
// rise is a fill (vessel.h).

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/time.h"
#include "core/card/fault.h"
#include "core/checks/vessel.h"

namespace bathside {

struct VesselCase {
    std::vector<LevelReading> log;  // days since the first reading
    WallTime last{};                // of the last reading
    double minimum = 0;             // L
    double alarm = 0;               // L/day
    double error = 0;               // L, between two readings of one level
    double recentDays = 0;
    double confidence = 0;
};

struct VesselAnswer {
    double litres = 0;  // at the last reading
    bool isBelowMinimum = false;
    std::optional<Evaporation> evaporation;
    std::optional<Evaporation> ofLate;  // where that is too high
    std::optional<Vacuum> vacuum;       // the worse of the two; none: no loss is shown
    /// By the greater loss; one of late that has yet to be confirmed only brings `earliest`
    /// forward.
    std::optional<Refill> refill;
    WallTime last{};
};

[[nodiscard]] Result<VesselCase, DocumentFault> vesselCaseFrom(std::string_view document);
[[nodiscard]] VesselAnswer answered(const VesselCase& vessel);
/// One object in one line; dates in UTC.
[[nodiscard]] std::string toJson(const VesselAnswer& answer);

/// `days` after `from`; none beyond the years that can be written.
[[nodiscard]] std::optional<WallTime> dateAfter(WallTime from, double days);

}  // namespace bathside
