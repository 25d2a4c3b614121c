#pragma once

// The card's section `live_cells` from its document.
//
// `{"shown": true, "minimum_pfu": 2000, "minimum_source": "…", "titre_off_percent": 20, "in_bath":
// {"half_life_low_ms": 10800000, "half_life_high_ms": 18000000, "source": "…"}, "in_bag": {…}}`.
// Only `shown` must be there; a minimum and a loss stand with their source or not at all.

#include "core/card/live_cell_rules.h"
#include "core/card/strict_json.h"

namespace bathside {

[[nodiscard]] LiveCellRules liveCellsFrom(JsonObject cells);

}  // namespace bathside
