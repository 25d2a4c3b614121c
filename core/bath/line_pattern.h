#pragma once

// Finds the number in the line of text that a serial thermometer, meter or balance sends.
//
// A pattern shows a whole line with `#` where the number stands; `*` is any text, as short as will
// do; a blank is any blanks, or none at an end; a backslash takes the next character as it is.
// Example: `T1 = # C*`. The number has one decimal sign, which the pattern names, a sign at most,
// no group signs and no exponent. Where `*` or the line's end stands beside it, no digit, sign,
// point or comma may: `1.234,5` and `23.5` read with a comma are no number rather than a part of
// one.

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/base/units.h"
#include "core/bath/resistance.h"

namespace bathside {

enum class DecimalSign : std::uint8_t { Point, Comma };

template <>
struct Names<DecimalSign> {
    static constexpr std::array<std::string_view, 2> all{"point", "comma"};
};

enum class PatternFault : std::uint8_t {
    NoNumber,    // no `#`
    TwoNumbers,  // more than one
    OpenEscape,  // a backslash at the end
    NotText,     // a control character
    TooLong,     // more than `LinePattern::kLongest` bytes
};

class LinePattern {
public:
    static constexpr std::size_t kLongest = 80;       // bytes of a pattern
    static constexpr std::size_t kLongestLine = 256;  // bytes; a longer line is unreadable

    [[nodiscard]] static Result<LinePattern, PatternFault> from(std::string_view pattern,
                                                                DecimalSign decimal);

    /// The number in `line`; blanks and line breaks around it do not count. Empty for a blank line,
    /// else unreadable where the pattern does not fit.
    [[nodiscard]] Result<double, ReadingFault> numberIn(std::string_view line) const;

private:
    enum class Kind : std::uint8_t { Character, Blanks, Anything, Number };
    struct Piece {
        Kind kind = Kind::Character;
        char character = 0;
    };
    class Match;

    LinePattern(std::vector<Piece> pieces, DecimalSign decimal);

    std::vector<Piece> m_pieces;
    DecimalSign m_decimal = DecimalSign::Point;
};

/// What the number on a line means: °C as it stands, or Ω of an element.
using LineMeaning = std::variant<std::monostate, Platinum, Thermistor>;

/// A line as a reading, to the nearest m°C. What no thermometer can show (below −273.15 or above
/// 1000 °C) is implausible.
[[nodiscard]] std::variant<MilliCelsius, ReadingFault> readLine(const LinePattern& pattern,
                                                                const LineMeaning& meaning,
                                                                std::string_view line);

}  // namespace bathside
