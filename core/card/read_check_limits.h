#pragma once

// The card's section `check_limits` from its document.
//
// `{"dose": {"systematic_per_mille": 30, "random_per_mille": 20, "diluent_density_g_l": 1012,
// "words": {"en": "…"}, "source": "…"}, "birds": {"target_per_mille": 970, "confidence_per_mille":
// 900, "words": {"en": "…"}, "source": "…"}}`. Either may be left out, and within them the density
// and the confidence.

#include <string>
#include <vector>

#include "core/card/card.h"
#include "core/card/strict_json.h"

namespace bathside {

[[nodiscard]] CheckRules checkLimitsFrom(JsonObject limits,
                                         const std::vector<std::string>& languages);

}  // namespace bathside
