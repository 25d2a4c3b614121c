#pragma once

// The digits of base 16 as the trail writes them.

#include <string_view>

namespace bathside {

inline constexpr std::string_view kHexDigits = "0123456789abcdef";

}  // namespace bathside
