#pragma once

// The boot's id as text: a hyphenated UUID in lower case, as the kernel gives it.

#include <optional>
#include <string>
#include <string_view>

#include "core/base/time.h"

namespace bathside {

[[nodiscard]] std::string toText(const BootId& id);
void appendText(std::string& out, const BootId& id);

/// Exactly that form; anything else is nothing.
[[nodiscard]] std::optional<BootId> bootIdFromText(std::string_view text);

}  // namespace bathside
