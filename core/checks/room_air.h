#pragma once

// The oxygen left in a room when cryogen boils off in it.
//
// All at once, worst case (University of Nottingham's published calculation): O2 = base (Vr −
// Vg)/Vr, Vg = litres × expansion; and with the gas mixing in while as much air leaves: base
// exp(−Vg/Vr). Steady loss with ventilation (University of Oxford, safety policy S4/03, appendix
// 1): the gas takes Ct = L / (Vr n) of the air, L in m³/h, n air changes an hour. Expansion: 680 to
// 704 at 15 to 25 °C (Span et al. 2000), 700 by default. It is an estimate: gas is heavier when
// cold and does not spread evenly, so a meter at the bench stays necessary. Vr in m³, O2 in %.
// (Spec: checks, room.)

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/facts/names.h"

namespace bathside {

inline constexpr double kExpansion = 700;      // gas at room temperature over liquid
inline constexpr double kOxygenOfAir = 20.95;  // %

struct BoilOff {
    double room = 0;    // m³, > 0
    double litres = 0;  // of liquid
    double expansion = kExpansion;
    double base = kOxygenOfAir;  // %
};

[[nodiscard]] double oxygenAtOnce(const BoilOff& boilOff);  // %, never below 0
[[nodiscard]] double oxygenMixed(const BoilOff& boilOff);   // %

/// % that is left in the end while `litresPerDay` boil off steadily with `airChanges` an hour. In a
/// closed room, 0 of them, nothing is left in the end: see `daysTo`.
[[nodiscard]] double oxygenVentilated(const BoilOff& room, double litresPerDay, double airChanges);

/// Days until `oxygen` % is left in a closed room in which `litresPerDay` boil off, the gas mixing
/// in while as much air leaves: −Vr/Vg ln(O2/base), Vg a day. None where nothing boils off.
[[nodiscard]] std::optional<double> daysTo(double oxygen, const BoilOff& room, double litresPerDay);

/// Litres that, all at once, leave `oxygen` %.
[[nodiscard]] double litresTo(double oxygen, const BoilOff& room);

enum class AirCaution : std::uint8_t {
    None,
    Warning,   // below 19.5 %: oxygen-deficient (OSHA, 29 CFR 1910.146(b) and 1910.134)
    Leave,     // below 18 %: leave the room (second level of a published university note)
    Impaired,  // below 14 %: people are impaired (same note)
};

template <>
struct Names<AirCaution> {
    static constexpr std::array<std::string_view, 4> all{"none", "warning", "leave", "impaired"};
};

inline constexpr double kWarningOxygen = 19.5;  // %
inline constexpr double kLeaveOxygen = 18;      // %
inline constexpr double kImpairedOxygen = 14;   // %

[[nodiscard]] AirCaution cautionAt(double oxygen);

}  // namespace bathside
