#pragma once

// Where a probe's readings come from, as its document says: the optional section `source`.
//
// `{"kind": "one-wire", "device": "28-0000075f2b1c"}`; `{"kind": "serial", "port": "/dev/ttyUSB0",
// "baud": 9600, "pattern": "T = # C", "decimal": "point", "shows": "celsius"}`, and where it shows
// "ntc" with its coefficients, `"ntc": {"a": 1129148000000000, "b": 234125000000000, "c":
// 87674100000}` in 1e-18 of the equation's own (resistance.h); `{"kind": "hand"}`, which is meant
// where nothing stands; `{"kind": "out of use"}`. Nothing is opened here: whether the device is
// there is the driver's question.

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "core/bath/line_pattern.h"
#include "core/card/strict_json.h"

namespace bathside {

/// A person reads it and types it in.
struct ByHand {
    friend bool operator==(const ByHand&, const ByHand&) = default;
};

struct OneWire {
    std::string device;  // as the kernel names it
    friend bool operator==(const OneWire&, const OneWire&) = default;
};

/// What a line's number is: °C, or the ohms of a platinum element (IEC 60751) or of a thermistor.
enum class LineUnit : std::uint8_t { Celsius, Pt100, Pt1000, Ntc };
template <>
struct Names<LineUnit> {
    static constexpr std::array<std::string_view, 4> all{"celsius", "pt100", "pt1000", "ntc"};
};

/// Of a thermistor's coefficients, in 1e-18: exact as a double.
inline constexpr std::int64_t kLargestCoefficient = 9'000'000'000'000'000;

struct SerialLine {
    std::string port;     // a path, absolute
    int baud = 9'600;     // one of `kBauds`
    std::string pattern;  // one that `LinePattern::from` takes
    DecimalSign decimal = DecimalSign::Point;
    LineUnit shows = LineUnit::Celsius;
    std::optional<Thermistor> ntc{};  // where it shows one's ohms, and only there
    friend bool operator==(const SerialLine&, const SerialLine&) = default;
};

/// Kept for the record; neither read nor offered.
struct OutOfUse {
    friend bool operator==(const OutOfUse&, const OutOfUse&) = default;
};

using ProbeSource = std::variant<ByHand, OneWire, SerialLine, OutOfUse>;

/// The speeds that POSIX names and such devices use.
inline constexpr std::array<int, 10> kBauds{300,   600,    1'200,  2'400,  4'800,
                                            9'600, 19'200, 38'400, 57'600, 115'200};

[[nodiscard]] LineMeaning meaningOf(const SerialLine& line);

/// Faults are left with the document that `object` belongs to.
[[nodiscard]] ProbeSource sourceIn(JsonObject object);
/// Canonical JSON; `{"kind":"hand"}` for a hand.
[[nodiscard]] std::string documentOf(const ProbeSource& source);

}  // namespace bathside
