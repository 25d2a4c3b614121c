#pragma once

// A one-wire thermometer's text, as the kernel gives it in `w1_slave`: two lines, the first with
// the nine bytes read, their CRC and YES or NO, the second with the bytes kept and `t=` in m°C.
//
// Source: Linux, Documentation/w1/slaves/w1_therm.rst and drivers/w1/slaves/w1_therm.c. Where the
// first line says NO, `t=` was computed from the bad read and is never looked at. The CRC is
// checked again here, because a bus of zeros passes the kernel's.

#include <cstdint>
#include <span>
#include <string_view>
#include <variant>

#include "core/base/units.h"
#include "core/facts/words.h"

namespace bathside {

/// CRC-8 of one-wire devices: x⁸ + x⁵ + x⁴ + 1, reflected, from 0 (Maxim Application Note 27).
[[nodiscard]] std::uint8_t w1Crc(std::span<const std::uint8_t> bytes);

/// The temperature, or why it is none: power-on value (85.000 °C, or 127.9375 °C with byte 6 =
/// 0x0c), open line (−127 °C), all zeros, failed CRC, no text, or text of another form.
[[nodiscard]] std::variant<MilliCelsius, ReadingFault> readW1(std::string_view text);

}  // namespace bathside
