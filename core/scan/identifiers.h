#pragma once

// The GS1 application identifiers (AIs) that we read, and what their data must look like.
//
// Source: GS1 Syntax Dictionary (maintained by GS1 AISBL) and General Specifications, section 3;
// which need no separator behind them: figure 7.8.5-2. An AI is two to four digits; no AI is the
// beginning of another.

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bathside::gs1 {

enum class Form : std::uint8_t {
    Gtin,     // 14 digits, the last a check digit
    Key,      // another number whose last digit is a check digit
    Day,      // YYMMDD, DD may be 00
    Minute,   // YYMMDDHHMM
    Count,    // a whole number
    Measure,  // a number whose decimals the AI's last digit gives
    Digits,   // digits that are no number to reckon with
    Text,     // of the 82 signs
};

struct Identifier {
    std::string_view digits;  // as far as it is given: the rest of `length` is the decimals' digit
    std::size_t length = 0;
    Form form{};
    std::size_t least = 1, most = 1;  // length of its data
    bool fixed = false;               // its length is predefined: no separator is needed behind it
    char lastDigit = '9';             // the greatest that may stand for the decimals
};

/// The identifier that `text` begins with; null: none that we know.
[[nodiscard]] const Identifier* identifierAt(std::string_view text);

/// One of the 82 signs that text data may have (General Specifications, figure 7.11-1).
[[nodiscard]] bool isTextSign(char sign);

}  // namespace bathside::gs1
