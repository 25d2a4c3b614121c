#pragma once

// Does an injector give its dose? Weighed or measured shots against the dose that is set.
//
// ISO 8655-6: V = m Z with Z = (1 − ρa/ρb) / (ρ − ρa), ρb 8000 kg/m³; systematic error V̄ − Vs, also
// in % of the set volume (2022 edition), random error as standard deviation with n − 1 and as
// coefficient of variation. Air: the simplified CIPM formula (OIML R 111-1), 600 to 1100 hPa, 10 to
// 30 °C. Water: Tanaka (see heat_matter.h); other diluents by the density on the card. Formulas
// from memory and secondary pages, values within 0.0001 of the printed Z. Volumes in mL, masses in
// g. (Spec: checks, dose check.)

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/checks/sample.h"
#include "core/facts/names.h"

namespace bathside {

/// kg/m³; humidity in %.
[[nodiscard]] double airDensity(double celsius, double hectopascals, double humidity);

/// mL for each g that the balance shows, of a liquid of `density` kg/m³.
[[nodiscard]] double weighingFactor(double density, double airDensity);

struct DoseErrors {
    std::size_t shots = 0;
    double mean = 0;                      // mL
    double systematic = 0;                // mL
    double systematicPercent = 0;         // of the dose that is set
    std::optional<double> random;         // mL; none: shots were not measured one by one
    std::optional<double> randomPercent;  // of the mean
    std::optional<Interval> interval;     // of the mean, mL
};

/// From shots measured one by one.
[[nodiscard]] DoseErrors errorsOf(std::span<const double> volumes, double dose, double confidence);

/// From all shots together in a graduated cylinder: the quick form, which knows no random error.
/// The interval is half a graduation either way.
[[nodiscard]] DoseErrors errorsInCylinder(int shots, double collected, double graduation,
                                          double dose);

struct DoseLimits {
    double systematicPercent = 0;  // either way
    double randomPercent = 0;
    friend bool operator==(const DoseLimits&, const DoseLimits&) = default;
};
/// Where a site sets no others: an injector is kept within 5 % of its dose. Common practice, from
/// memory; no standard sets a limit for injectors (ISO 8655 sets them for pipettes).
inline constexpr DoseLimits kUsualDoseLimits{5, 5};

enum class DoseVerdict : std::uint8_t { Good, Failed };

template <>
struct Names<DoseVerdict> {
    static constexpr std::array<std::string_view, 2> all{"good", "failed"};
};

struct JudgedDose {
    DoseVerdict verdict = DoseVerdict::Failed;
    bool isCertain = false;  // the whole interval of the mean is on the same side of the limit
};

/// A value at its limit is good, to within 1e-9 %.
[[nodiscard]] JudgedDose judged(const DoseErrors& errors, double dose, const DoseLimits& limits);

}  // namespace bathside
