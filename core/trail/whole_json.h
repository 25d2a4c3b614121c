#pragma once

// Is this text what the trail writes? Canonical JSON (RFC 8785) whose numbers are all whole and
// within ±(2^53 − 1), so that every reader of JSON reads the same number.
//
// One pass over the bytes, nothing built: an event's payload takes well under a microsecond.

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace bathside {

inline constexpr std::int64_t kLargestWhole = 9007199254740991;  // 2^53 − 1

/// `text` is one such value and nothing else.
[[nodiscard]] bool isWhole(std::string_view text);

/// `text` is one such object and nothing else: a payload.
[[nodiscard]] bool isPayload(std::string_view text);

/// The length of such a value at the front of `text`; 0 where there is none.
[[nodiscard]] std::size_t wholeLength(std::string_view text);

/// The length of a canonical string, quotes included, at the front of `text`; 0 where there is
/// none.
[[nodiscard]] std::size_t jsonStringLength(std::string_view text);

/// What a canonical string says; `quoted` has been measured by `jsonStringLength`.
[[nodiscard]] std::string unquoted(std::string_view quoted);

}  // namespace bathside
