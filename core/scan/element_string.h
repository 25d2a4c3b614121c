#pragma once

// GS1 element strings: what is behind a symbology identifier, or in brackets under a symbol.
//
// As scanned: AI and data, one behind the other; data without a predefined length ends at a
// separator (FNC1, sent as ASCII 29) or at the end. A separator at the very front, behind data of
// predefined length or at the very end does no harm. In brackets: "(01)09521234500018 (10)LOT7A",
// blanks between elements allowed. Whether elements may go together is not judged: a label is read
// as it is. (GS1 General Specifications, 3, 7.8, 7.9, 7.12.)

#include <chrono>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/scan/fault.h"

namespace bathside::gs1 {

inline constexpr char kSeparator = '\x1d';

/// 14 digits; the check digit is right.
struct Gtin {
    std::string digits;
    friend bool operator==(const Gtin&, const Gtin&) = default;
};
/// Any other key (SSCC, GLN, GSIN); the check digit is right.
struct Key {
    std::string digits;
    friend bool operator==(const Key&, const Key&) = default;
};
struct Text {
    std::string text;
    friend bool operator==(const Text&, const Text&) = default;
};
struct Count {
    std::int64_t count = 0;
    friend bool operator==(const Count&, const Count&) = default;
};
/// amount · 10^-decimals, in the unit or currency that belongs to the AI.
struct Measure {
    std::int64_t amount = 0;
    int decimals = 0;
    friend bool operator==(const Measure&, const Measure&) = default;
};
using Date = std::chrono::year_month_day;  // day 00 is already the month's last
using DateTime = std::chrono::local_time<std::chrono::minutes>;
using Value = std::variant<Gtin, Key, Text, Count, Measure, Date, DateTime>;

struct Element {
    std::string ai;
    std::string data;  // as it stands in the symbol
    Value value;
    friend bool operator==(const Element&, const Element&) = default;
};

struct ElementString {
    std::vector<Element> elements;  // in the symbol's order, each AI once; at least one
    friend bool operator==(const ElementString&, const ElementString&) = default;
};

/// The year that two digits mean in the year `now`: 49 years back to 50 ahead (7.12).
[[nodiscard]] std::chrono::year yearOf(int twoDigits, std::chrono::year now);

/// `at` in faults counts from the front of `text`.
[[nodiscard]] Result<ElementString, ScanFault> elementsFrom(std::string_view text,
                                                            std::chrono::year now);
[[nodiscard]] Result<ElementString, ScanFault> bracketedFrom(std::string_view text,
                                                             std::chrono::year now);

/// "(01)09521234500018(10)LOT7A"
[[nodiscard]] std::string bracketed(const ElementString& elements);
/// As a scanner sends it, with separators where they are needed.
[[nodiscard]] std::string scannedForm(const ElementString& elements);

}  // namespace bathside::gs1
