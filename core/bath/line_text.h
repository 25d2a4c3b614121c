#pragma once

// Small things that every reader of a sensor's text needs.

#include <string_view>

namespace bathside {

inline constexpr std::string_view kAround = " \t\r\n";

[[nodiscard]] constexpr bool isDigit(char c) { return c >= '0' && c <= '9'; }

/// Without blanks and line ends at both ends.
[[nodiscard]] constexpr std::string_view trimmed(std::string_view text)
{
    const auto from = text.find_first_not_of(kAround);
    return from == std::string_view::npos
               ? std::string_view()
               : text.substr(from, text.find_last_not_of(kAround) - from + 1);
}

}  // namespace bathside
