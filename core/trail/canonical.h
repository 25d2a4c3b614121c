#pragma once

// Canonical JSON (RFC 8785): the one text of a JSON value, so that anybody can recompute its hash.
//
// Keys are ordered by UTF-16 code units, numbers stand as ECMAScript writes the double they name,
// strings are UTF-8 without needless escapes. Refused, with where: text that is not JSON (RFC
// 8259), a repeated key, a lone surrogate, a number beyond a double, nesting deeper than 64.

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace bathside {

inline constexpr std::size_t kDeepestJson = 64;

struct JsonFault {
    enum class Kind : std::uint8_t { NotJson, RepeatedKey, TooDeep };
    Kind kind = Kind::NotJson;
    std::size_t position = 0;  // bytes before the fault, where known
    std::string found;         // the key, or what the reader stumbled over
    friend bool operator==(const JsonFault&, const JsonFault&) = default;
};

[[nodiscard]] Result<std::string, JsonFault> canonicalised(std::string_view json);

/// A double as ECMAScript's Number::toString writes it; it must be finite.
[[nodiscard]] std::string ecmaNumber(double value);

}  // namespace bathside
