#pragma once

// What differs between two cards, key by key, for the one who approves the new one.

#include <optional>
#include <string>
#include <vector>

#include "core/card/card.h"

namespace bathside {

struct CardDifference {
    std::string key;                    // path, as in a fault
    std::optional<std::string> before;  // JSON of the value; none: the key is new
    std::optional<std::string> after;   // none: the key is gone
    friend bool operator==(const CardDifference&, const CardDifference&) = default;
};

/// Every leaf that differs, by key.
[[nodiscard]] std::vector<CardDifference> differences(const Card& before, const Card& after);

}  // namespace bathside
