#pragma once

// One reading to be judged, as the command line takes it in and gives it out: JSON in °C.
//
// (Spec: command line, reading.) Every key is required except those that `probeFrom` lets go.

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/bath/probe.h"

namespace bathside {

struct ReadingCase {
    Probe probe;
    Tolerance tolerance;
    double indicated = 0;      // °C
    std::chrono::sys_days on;  // the local day of "at"
    double stability = 0;      // °C, standard
};

[[nodiscard]] Result<ReadingCase, DocumentFault> readingCaseFrom(std::string_view document);

[[nodiscard]] Judged judged(const ReadingCase& reading);

/// One object in one line. "warnings" holds what qualifies the value; that nothing can be inside is
/// "can_decide".
[[nodiscard]] std::string toJson(const Judged& judged);

}  // namespace bathside
