#pragma once

// A live-cell budget as the command line takes it in and gives it out.
//
// `{"titre_per_dose": {"low": 3000, "high": 4000}, "doses_in": 4000, "doses_out": 4000,
// "bath_min": 1.5, "bag_min": 60, "minimum_per_dose": 1000, "bath_loss": {"half_life_h": {"low": 3,
// "high": 5}, "source": "…"}, "bag_loss": {…}}`. Without a loss whose time is not 0 there is
// nothing to show.

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/card/fault.h"
#include "core/checks/live_cells.h"

namespace bathside {

struct LiveCellsCase {
    LiveCells cells;
    double minimum = 0;  // per dose
};

[[nodiscard]] Result<LiveCellsCase, DocumentFault> liveCellsCaseFrom(std::string_view document);
/// One object in one line: {"shown": false} or the band, its share, verdict and sources.
[[nodiscard]] std::string toJson(const LiveCellsCase& budget);

}  // namespace bathside
