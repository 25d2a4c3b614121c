#pragma once

// The card's limits from its document: which levels each can have, in which unit, and its words.

#include <array>
#include <string>
#include <vector>

#include "core/card/card.h"
#include "core/card/strict_json.h"

namespace bathside {

inline constexpr std::size_t kLongestSource = 200;  // characters

/// The object `limits`: every limit by its name, and no other.
[[nodiscard]] std::array<Limit, kLimits> limitsFrom(JsonObject limits,
                                                    const std::vector<std::string>& languages);

/// `heads_up_ms`, `at_ms` and `overrun_ms` of an ampoule's limit.
[[nodiscard]] Thresholds<Millis> ampouleTimesFrom(JsonObject& object);

/// The object at `key`: text in each of the card's languages, and no other.
[[nodiscard]] Words wordsFrom(JsonObject& object, std::string_view key,
                              const std::vector<std::string>& languages);

}  // namespace bathside
