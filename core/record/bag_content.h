#pragma once

// Which ampoules a bag got, by component and lot.

#include <map>
#include <string>
#include <utility>

#include "core/bench/bench.h"

namespace bathside {

struct BagContent {
    std::int64_t ampoules = 0;
    std::map<std::pair<ComponentId, LotId>, std::int64_t> lots;

    /// "2 × serotype 3 K07, 1 × serotype 1 R11"
    [[nodiscard]] std::string text() const;
};

[[nodiscard]] BagContent contentOf(const Bench& bench, const BagId& bag);

}  // namespace bathside
