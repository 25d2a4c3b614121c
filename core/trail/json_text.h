#pragma once

// The pieces that canonical JSON (RFC 8785) is written from.
//
// Strings escape only `"`, `\` and the control characters; text is not normalised. Bytes that are
// not UTF-8 come out as U+FFFD, so that what is written can always be read.

#include <cstdint>
#include <string>
#include <string_view>

namespace bathside {

/// A character that stands in a JSON string as it is, by itself: ASCII without controls, `"` and
/// `\`.
[[nodiscard]] constexpr bool isPlainInJson(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x20 && byte < 0x80 && c != '"' && c != '\\';
}

/// How many such characters `text` begins with.
[[nodiscard]] std::size_t plainLength(std::string_view text);

/// `text` in quotes.
void appendJsonString(std::string& out, std::string_view text);
void appendNumber(std::string& out, std::int64_t value);

/// The length of the UTF-8 sequence at the front of `text` (RFC 3629: shortest form, no surrogates,
/// at most U+10FFFF); 0 where there is none.
[[nodiscard]] std::size_t utf8Length(std::string_view text);

[[nodiscard]] bool isUtf8(std::string_view text);

}  // namespace bathside
