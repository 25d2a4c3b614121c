#pragma once

// The order of RFC 8785 keys: by UTF-16 code units, which differs from the order of UTF-8 bytes
// only where a character beyond U+FFFF (a surrogate pair, D800 …) meets one of U+E000 … U+FFFF.

#include <string_view>

namespace bathside {

/// Both are UTF-8.
[[nodiscard]] bool utf16Less(std::string_view a, std::string_view b);

}  // namespace bathside
