#pragma once

// One vaccination check as the command line takes it in and gives it out.
//
// `{"good": 97, "looked_at": 100, "target": 0.95, "confidence": 0.95}`; `confidence` may be left
// out.

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/card/fault.h"
#include "core/checks/coverage.h"

namespace bathside {

struct CoverageCase {
    Looked looked;
    double target = 0;
    double confidence = 0;
};

struct CoverageAnswer {
    double share = 0;
    Interval interval;  // two-sided
    CoverageVerdict verdict = CoverageVerdict::Undecided;
    std::optional<int> neededAtBest;  // birds, if none of them misses
    /// With as many misses as were found; none also where the target is missed: birds that make it
    /// up would have to be other ones.
    std::optional<int> needed;
};

[[nodiscard]] Result<CoverageCase, DocumentFault> coverageCaseFrom(std::string_view document);
[[nodiscard]] CoverageAnswer answered(const CoverageCase& check);
/// One object in one line.
[[nodiscard]] std::string toJson(const CoverageAnswer& answer);

}  // namespace bathside
