#pragma once

// A probe within a larger document (the `reading` verb's input holds one).

#include "core/bath/probe.h"
#include "core/card/strict_json.h"

namespace bathside {

/// Faults are left with the document that `object` belongs to.
[[nodiscard]] Probe probeIn(JsonObject object);

/// A calendar day "YYYY-MM-DD"; none: it is no such day.
[[nodiscard]] std::optional<std::chrono::sys_days> dayFrom(std::string_view text);

/// What a thermometer may show or be corrected to.
inline constexpr NumberRange kCelsius{-273.15, 1000, "°C"};

}  // namespace bathside
