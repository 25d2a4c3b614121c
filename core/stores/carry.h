#pragma once

// The balance carried into a shift, as a document: what its fold begins with.
//
// Whole numbers, texts and days only. A lot is left behind when none of it is left, it has expired
// and it is not in quarantine; until then it stays known, and with it what was received of it.

#include <map>
#include <optional>

#include "core/stores/stores.h"

namespace bathside {

/// None where the stores hold nothing to carry.
[[nodiscard]] std::optional<Document> carried(const Stores& stores, std::chrono::sys_days day);

/// The lots of such a document, each as a shift begins with it; none where it cannot be read.
[[nodiscard]] std::map<Stock, StockLot> lotsFrom(const Document& document);

}  // namespace bathside
