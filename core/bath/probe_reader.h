#pragma once

// A probe within a larger document (the `reading` verb's input holds one).

#include "core/base/day.h"
#include "core/bath/probe.h"
#include "core/card/strict_json.h"

namespace bathside {

/// Faults are left with the document that `object` belongs to.
[[nodiscard]] Probe probeIn(JsonObject object);

/// What a thermometer may show or be corrected to.
inline constexpr NumberRange kCelsius{-273.15, 1000, "°C"};

}  // namespace bathside
