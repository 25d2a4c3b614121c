#pragma once

// Doses in an ampoule: what its lot in the stores says, else the card's.

#include "core/card/card.h"
#include "core/stores/stores.h"

namespace bathside {

[[nodiscard]] std::int64_t ampouleDoses(const StockLot& lot, const PlanRules& rules);
/// A lot that the stores do not have counts as the card says.
[[nodiscard]] std::int64_t ampouleDoses(const Stores& stores, const PlanRules& rules,
                                        const ComponentId& component, const LotId& lot);

}  // namespace bathside
