#pragma once

// A thermometer as its certificate describes it, and one reading judged by it.
//
// Correction is linear between calibration points and held constant beyond the ends; the expanded
// uncertainty combines certificate, resolution, drift and stability (JCGM 100, k = 2); the verdict
// is a guard-banded decision (after JCGM 106). Pure; temperatures here are in °C as doubles because
// they are computed with; the trail stores whole m°C. (Spec: temperatures, calibration and
// verdict.)

#include <array>
#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/ids.h"
#include "core/base/result.h"
#include "core/bath/probe_source.h"
#include "core/card/fault.h"
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
    std::vector<CalibrationPoint> points;  // by indicated, strictly rising; none: not calibrated
    ProbeSource source{};
    bool inBath = false;  // said of one at a time: what others read of themselves is not the bath
};

using ProbeFault = DocumentFault;

/// A probe from its JSON document, in one of two forms: °C as decimals (keys of the `reading`
/// verb's "probe") or whole µ°C (`resolution_uc`, `drift_uc`, and in each point `indicated_uc`,
/// `reference_uc`, `expanded_uc`), as the trail keeps it. `id`, `name`, `certificate` and
/// `calibrated` may be left out, `due` only without points, `source` (probe_source.h) for a hand,
/// `in_bath` where it is false.
[[nodiscard]] Result<Probe, ProbeFault> probeFrom(std::string_view document);

/// The canonical document in whole µ°C, fit for a fact; `probeFrom` reads it back to the nearest
/// µ°C.
[[nodiscard]] std::string documentOf(const Probe& probe);

struct Tolerance {
    double target = 0;     // °C
    double tolerance = 0;  // °C, > 0
    double guard = 1;      // guard band as a multiple of U, >= 0
};

enum class ReadingWarning : std::uint8_t {
    BeyondRange,    // of the calibration: the end's correction was taken
    Overdue,        // the day is after the probe's due date
    NotCalibrated,  // no points: undecided at best
    CannotDecide,   // the guard band leaves no room: never inside
};

/// In a report: "beyond calibrated range" and so on.
template <>
struct Names<ReadingWarning> {
    static constexpr std::array<std::string_view, 4> all{
        "beyond calibrated range", "calibration overdue", "not calibrated", "cannot decide"};
};

struct Judged {
    double corrected = 0;  // °C
    double expanded = 0;   // °C, k = 2
    Verdict verdict = Verdict::Undecided;
    double conformity = 0;  // normal probability that the true value lies within the tolerance
    std::vector<ReadingWarning> warnings;
};

/// One reading judged. Limits belong to the regions they bound, to within 1e-9 °C, so that decimal
/// values stay on their side in binary arithmetic. `on` is the local day of the reading;
/// `stability` a standard uncertainty in °C.
[[nodiscard]] Judged judged(const Probe& probe, const Tolerance& tolerance, double indicated,
                            std::chrono::sys_days on, double stability);

/// The same for a reading on record: as steady as its `expanded` says.
[[nodiscard]] Judged judgedAgain(const Probe& probe, const Tolerance& tolerance, double indicated,
                                 std::chrono::sys_days on, double expanded);

}  // namespace bathside
