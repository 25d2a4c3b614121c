#pragma once

// What it takes to warm ice, water and glass: J, kg, K, at 101.325 kPa.
//
// Ice and water: computed with TEOS-10 (gsw), which holds IAPWS-06 and the 2008 water properties;
// straight lines between its values at the temperatures in the source. Mean of ice from −195.8 to
// 0 °C within 0.03 %. Below −195.8 °C and above 40 °C the end's value holds. Glass: about
// 0.6 kJ/(kg K) as a mean from −196 to 27 °C, from memory and with low confidence: a field wherever
// it counts.

namespace bathside {

inline constexpr double kCryogenCelsius = -195.795;  // nitrogen boiling (Span et al. 2000)
inline constexpr double kMeltHeat = 333'430;         // J/kg at 0 °C (TEOS-10, IAPWS-06)
inline constexpr double kGlassHeat = 600;            // J/(kg K)

[[nodiscard]] double iceHeatCapacity(double celsius);    // J/(kg K)
[[nodiscard]] double waterHeatCapacity(double celsius);  // J/(kg K)

/// J/kg above liquid water at 0 °C, so negative for ice: of ice at or below 0 °C; of water, also
/// below 0 °C, where it is supercooled and its heat capacity stays that of 0 °C.
[[nodiscard]] double iceEnthalpy(double celsius);
[[nodiscard]] double waterEnthalpy(double celsius);

/// kg/m³ of air-free water (Tanaka et al., Metrologia 38 (2001) 301), 0 to 40 °C.
[[nodiscard]] double waterDensity(double celsius);

}  // namespace bathside
