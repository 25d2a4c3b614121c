#pragma once

// A control chart as the command line takes it in and gives it out.
//
// `{"values": [49.6, 47.6, …], "baseline": 10, "rules": ["1 beyond 3", "8 on one side"], "limit":
// {"at": 90, "side": "upper"}}`: the first `baseline` values (all where it is left out) give centre
// and limits; without `rules` the four of Western Electric look at all values; `limit` asks for the
// capability.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/card/fault.h"
#include "core/checks/charts.h"

namespace bathside {

struct ChartLimit {
    double at = 0;
    LimitSide side{};
};

struct ChartCase {
    std::vector<double> values;
    std::size_t baseline = 0;
    std::vector<RunRule> rules;
    std::optional<ChartLimit> limit;
};

struct ChartAnswer {
    IndividualsChart chart;
    std::vector<RunSignal> signals;
    std::vector<std::size_t> wideRanges;  // values whose moving range is above its limit
    std::optional<double> capability;     // by the baseline's sigma; none without limit or scatter
};

[[nodiscard]] Result<ChartCase, DocumentFault> chartCaseFrom(std::string_view document);
[[nodiscard]] ChartAnswer answered(const ChartCase& chart);
/// One object in one line; values are counted from 0.
[[nodiscard]] std::string toJson(const ChartAnswer& answer);

}  // namespace bathside
