#pragma once

// Patterns for a line that a thermometer has just sent, so that a person chooses by the number that
// is read instead of writing a pattern.
//
// One for each number of the line, as far as its pattern reads that very number back: what else is
// a number becomes `*`, for it may change; all other text stays as it is.

#include <string>
#include <string_view>
#include <vector>

#include "core/bath/line_pattern.h"

namespace bathside {

struct OfferedPattern {
    std::string pattern;  // one that `LinePattern::from` takes
    DecimalSign decimal = DecimalSign::Point;
    double number = 0;  // that it reads in the line

    friend bool operator==(const OfferedPattern&, const OfferedPattern&) = default;
};

/// In the order of the line; none of a line without numbers, or one too long.
[[nodiscard]] std::vector<OfferedPattern> patternsFor(std::string_view line);

}  // namespace bathside
