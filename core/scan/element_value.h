#pragma once

// One element's data, checked and typed by its identifier. (GS1 General Specifications, 3 and 7.9.)

#include <string_view>

#include "core/scan/element_string.h"
#include "core/scan/identifiers.h"

namespace bathside::gs1 {

/// `at` in faults counts from the front of `data`, and `ai` is left empty. `decimals` is the AI's
/// last digit.
[[nodiscard]] Result<Value, ScanFault> valueOf(const Identifier& identifier, std::string_view data,
                                               int decimals, std::chrono::year now);

}  // namespace bathside::gs1
