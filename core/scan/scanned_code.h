#pragma once

// What a scanned text is: a GS1 element string, a trade item's number, one of our own codes, or
// plain text. Pure; the year decides the century of two-digit years.
//
// With a symbology identifier ("]d2" and the like, ISO/IEC 15424) the symbol has said what it is:
// ]C1 ]e0 ]d2 ]Q3 ]J1 hold element strings, ]E0 and ]E4 a trade item's number, and no other holds
// GS1 data. Many scanners send none. Then text is an element string when it is in brackets, has a
// separator, begins with 00, 01 or 02 and as many digits as these take, or begins with a date and
// is wholly made of two or more elements. Text that begins so and is wrong is a fault, not plain
// text.

#include <chrono>
#include <string>
#include <string_view>
#include <variant>

#include "core/scan/element_string.h"
#include "core/scan/own_code.h"

namespace bathside {

struct PlainText {
    std::string text;  // without the symbology identifier
    friend bool operator==(const PlainText&, const PlainText&) = default;
};

using ScannedContent =
    std::variant<gs1::ElementString, gs1::Gtin, BagCode, PersonCode, SealCode, PlainText>;

struct ScannedCode {
    std::string symbology;  // "]d2"; empty: the scanner sent none
    ScannedContent content;
    friend bool operator==(const ScannedCode&, const ScannedCode&) = default;
};

/// Bytes; no symbol holds more (QR code, 7089 digits: ISO/IEC 18004).
inline constexpr std::size_t kLongestScan = 7089 + 3;

/// `text` is what the scanner sent, without the key that ends it.
[[nodiscard]] Result<ScannedCode, ScanFault> scannedCodeFrom(std::string_view text,
                                                             std::chrono::year now);

}  // namespace bathside
