#pragma once

// Resistance thermometers that a meter reads: ohms in, °C out.
//
// Platinum: IEC 60751, R = R0 (1 + A t + B t² + C (t − 100 °C) t³) with C only below 0 °C, from
// −200 to 850 °C (coefficients as in the 2008 and 2022 editions); the inverse is exact above 0 °C
// and solved to 1e-9 °C below. NTC: 1/T = A + B ln R + C (ln R)³, T in K (Steinhart & Hart,
// Deep-Sea Research 15 (1968) 497), within the range given with it. An element's own tolerance is
// not in here: it belongs to the probe's calibration. Ohms that no temperature of the range has are
// a short or an open line, whichever is nearer; a number that is no resistance is unreadable.

#include <array>
#include <cstdint>
#include <optional>
#include <variant>

#include "core/base/result.h"
#include "core/facts/words.h"

namespace bathside {

struct Platinum {
    double ohmAtZero = 100;  // R0: 100 or 1000 Ω
    friend bool operator==(const Platinum&, const Platinum&) = default;
};

struct Thermistor {
    double a = 0;  // 1/K
    double b = 0;
    double c = 0;
    double lowest = -40;   // °C, of the range the coefficients hold for
    double highest = 125;  // °C
    friend bool operator==(const Thermistor&, const Thermistor&) = default;
};

using ResistanceElement = std::variant<Platinum, Thermistor>;

/// °C of `ohm`.
[[nodiscard]] Result<double, ReadingFault> celsiusOf(const ResistanceElement& element, double ohm);

/// Ω at `celsius`, which lies within −200 to 850 °C (asserted).
[[nodiscard]] double ohmOf(const Platinum& element, double celsius);

/// Ω at `celsius`, by which a person knows mistyped coefficients. None: they are no thermistor's,
/// for its resistance does not fall all the way from 10 MΩ to 1 Ω as temperature rises, or has no
/// such temperature between the two.
[[nodiscard]] std::optional<double> ohmOf(const Thermistor& element, double celsius);

struct ThermistorPoint {
    double celsius = 0;
    double ohm = 0;
};

enum class ThermistorFault : std::uint8_t {
    NoResistance,  // an ohm of 0 or below, or a temperature at or below absolute zero
    NotFalling,    // resistance must fall where temperature rises, at each of the three points
};

/// The coefficients that three measured points give, for the range from the coldest to the warmest
/// of them.
[[nodiscard]] Result<Thermistor, ThermistorFault> thermistorFrom(
    std::array<ThermistorPoint, 3> points);

}  // namespace bathside
