#pragma once

// The two check characters that scanned codes carry.
//
// GS1: weights 3, 1, 3 … from the right, modulo 10 (General Specifications, 7.9.1). Our own codes:
// ISO/IEC 7064 MOD 37,36, which finds any one wrong sign and nearly all that changed places.

#include <optional>
#include <string_view>

namespace bathside {

/// The digit that belongs behind `digits`, which are nothing but digits.
[[nodiscard]] char gs1CheckDigit(std::string_view digits);
/// Whether the last of `digits` is the check digit of those before it; false when there are none.
[[nodiscard]] bool hasGs1CheckDigit(std::string_view digits);

/// The sign (0 to 9, A to Z) that belongs behind `text`. Only its digits and capital letters count.
[[nodiscard]] char iso7064CheckCharacter(std::string_view text);

[[nodiscard]] constexpr bool isDigit(char sign) { return sign >= '0' && sign <= '9'; }
/// Where in `text` the first sign is that is no digit; none: all of them are.
[[nodiscard]] std::optional<std::size_t> firstNoDigit(std::string_view text);

}  // namespace bathside
