#pragma once

// Ohms to be converted, as the command line takes them in and gives them out.
//
// `{"element": "pt100", "ohm": 110.9}`, with "pt1000" alike; or `{"element": "ntc", "ohm": 9000,
// "points": [{"c": 5, "ohm": 25415}, …three]}`, or with the coefficients `"a", "b", "c"` and the
// range
// `"lowest_c", "highest_c"` instead of points.

#include <string>
#include <string_view>

#include "core/bath/resistance.h"
#include "core/card/fault.h"

namespace bathside {

struct ResistanceCase {
    ResistanceElement element;
    double ohm = 0;
};

[[nodiscard]] Result<ResistanceCase, DocumentFault> resistanceCaseFrom(std::string_view document);

/// {"celsius": 28.0053} or {"fault": "open line"}, in one line.
[[nodiscard]] std::string toJson(const Result<double, ReadingFault>& reading);

}  // namespace bathside
