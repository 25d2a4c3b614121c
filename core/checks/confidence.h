#pragma once

// Ranges that the checks' documents share.

#include "core/card/strict_json.h"

namespace bathside {

inline constexpr std::size_t kMostValues = 10'000;

/// "confidence", from 0.5 to 0.9999; 0.95 where it is left out.
[[nodiscard]] inline double confidenceIn(JsonObject& object)
{
    return object.numberIfAny("confidence", {0.5, 0.9999, ""}).value_or(0.95);
}

}  // namespace bathside
