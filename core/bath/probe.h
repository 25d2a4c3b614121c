#pragma once

// A thermometer as its certificate describes it, and one reading judged by it.
//
// Correction is linear between calibration points and held constant beyond the ends; the expanded
// uncertainty combines certificate, resolution, drift and stability (JCGM 100, k = 2); the verdict
// is a guard-banded decision (after JCGM 106). Pure; temperatures here are in °C as doubles because
// they are computed with; the trail stores whole m°C. (Spec: temperatures, calibration and verdict.)

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/ids.h"
#include "core/base/result.h"
#include "core/facts/words.h"

namespace bathside {

struct CalibrationPoint {
    double indicated = 0;  // °C
    double reference = 0;  // °C
    double expanded = 0;   // °C, U at k = 2
};

struct Probe {
    ProbeId id;
    std::string name;
    std::string certificate;
    std::optional<std::chrono::sys_days> calibrated;
    std::optional<std::chrono::sys_days> due;  // valid through this day
    double resolution = 0;                     // °C
    double drift = 0;                          // °C since calibration, half-width
    std::vector<CalibrationPoint> points;      // by indicated, strictly rising; none: not calibrated
};

struct ProbeFault {
    std::string key, found, expected;
};

/// A probe from its JSON document (keys of the `reading` verb's "probe", and id, name, certificate, calibrated).
[[nodiscard]] Result<Probe, ProbeFault> probeFrom(std::string_view document);

struct Tolerance {
    double target = 0;     // °C
    double tolerance = 0;  // °C, > 0
    double guard = 1;      // guard band as a multiple of U, >= 0
};

enum class ReadingWarning : std::uint8_t { BeyondRange, Overdue, NotCalibrated, CannotDecide };

struct Judged {
    double corrected = 0;    // °C
    double expanded = 0;     // °C, k = 2
    Verdict verdict = Verdict::Undecided;
    double conformity = 0;   // normal probability that the true value lies within the tolerance
    std::vector<ReadingWarning> warnings;
};

/// One reading judged. `on` is the local day of the reading; `stability` a standard uncertainty in °C.
[[nodiscard]] Judged judged(const Probe& probe, const Tolerance& tolerance, double indicated,
                            std::chrono::sys_days on, double stability);

}  // namespace bathside
