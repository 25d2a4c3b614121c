#pragma once

// A line's flow as the command line takes it in and gives it out.
//
// `{"pieces": [{"seconds": 600, "birds": 512}, …], "left": 1830, "confidence": 0.95}`: running time
// without breaks, and birds that the bag still serves; `left` and `confidence` may be left out.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/card/fault.h"
#include "core/checks/flow.h"

namespace bathside {

struct FlowCase {
    std::vector<FlowPiece> pieces;
    std::optional<int> left;  // birds
    double confidence = 0;
};

struct FlowAnswer {
    Flow flow;
    std::optional<EmptyIn> empty;
};

[[nodiscard]] Result<FlowCase, DocumentFault> flowCaseFrom(std::string_view document);
[[nodiscard]] FlowAnswer answered(const FlowCase& line);
/// One object in one line.
[[nodiscard]] std::string toJson(const FlowAnswer& answer);

}  // namespace bathside
