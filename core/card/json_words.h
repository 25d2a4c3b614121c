#pragma once

// What a fault says of a JSON value: what was found, what was expected, and whether they agree.

#include <cstddef>
#include <string>
#include <string_view>

#include <nlohmann/json_fwd.hpp>

#include "core/card/strict_json.h"

namespace bathside {

/// Unicode characters in UTF-8 text.
[[nodiscard]] std::size_t characters(std::string_view text);

/// The first characters of `text`, with a sign that there are more.
[[nodiscard]] std::string shortened(std::string_view text);

/// The value as JSON, shortened; of a list or an object only what it is.
[[nodiscard]] std::string shown(const nlohmann::json& value);

[[nodiscard]] std::string rangeText(const WholeRange& range);
[[nodiscard]] std::string rangeText(const NumberRange& range);
[[nodiscard]] std::string textRule(std::size_t longest);

[[nodiscard]] bool isWithin(const nlohmann::json& value, const WholeRange& range);
[[nodiscard]] bool isWithin(const nlohmann::json& value, const NumberRange& range);

/// Text of 1 to `longest` characters without control characters.
[[nodiscard]] bool isPlainText(const nlohmann::json& value, std::size_t longest);

}  // namespace bathside
