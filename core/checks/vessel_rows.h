#pragma once

// What a vessel's description and its log on the command line have in common. Not for others.

#include <optional>

#include "core/card/strict_json.h"
#include "core/checks/vessel.h"

namespace bathside {

inline constexpr NumberRange kVesselLitres{0, 10'000, "L"};
inline constexpr NumberRange kLitresPerDay{0.001, 1'000, "L/day"};
inline constexpr NumberRange kAlarmFactor{1, 10, ""};
inline constexpr double kUsualAlarmFactor = 1.5;  // ours, no published value

/// Its table; refused in `root` where it is none.
[[nodiscard]] std::optional<Dipstick> dipstickIn(JsonObject& root);

}  // namespace bathside
