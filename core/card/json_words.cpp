#include "core/card/json_words.h"

#include <algorithm>
#include <limits>

#include <nlohmann/json.hpp>

#include "core/trail/canonical.h"
#include "core/trail/json_text.h"

namespace bathside {

using nlohmann::json;

namespace {

constexpr std::size_t kShownCharacters = 60;

}  // namespace

std::size_t characters(std::string_view text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

/// The first characters of `text`, with a sign that there are more.
std::string shortened(std::string_view text)
{
    if (characters(text) <= kShownCharacters)
        return std::string(text);
    std::size_t end = 0;
    for (std::size_t shown = 0; shown < kShownCharacters; ++shown)
        end += std::max<std::size_t>(utf8Length(text.substr(end)), 1);
    return std::string(text.substr(0, end)) + "…";
}

std::string shown(const json& value)
{
    if (value.is_object())
        return "an object";
    if (value.is_array())
        return "a list of " + std::to_string(value.size());
    return shortened(value.dump());
}

std::string rangeText(const WholeRange& range)
{
    const std::string unit = range.unit.empty() ? "" : " of " + std::string(range.unit);
    return "a whole number" + unit + " from " + std::to_string(range.from) + " to " +
           std::to_string(range.to);
}

std::string rangeText(const NumberRange& range)
{
    const std::string unit = range.unit.empty() ? "" : " " + std::string(range.unit);
    return "a number from " + ecmaNumber(range.from) + " to " + ecmaNumber(range.to) + unit;
}

std::string textRule(std::size_t longest)
{
    return "text of 1 to " + std::to_string(longest) + " characters in one line";
}

bool isWithin(const json& value, const WholeRange& range)
{
    if (!value.is_number_integer())
        return false;
    if (value.is_number_unsigned() &&
        value.get<std::uint64_t>() >
            static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max()))
        return false;
    const auto number = value.get<std::int64_t>();
    return range.from <= number && number <= range.to;
}

bool isWithin(const json& value, const NumberRange& range)
{
    if (!value.is_number())
        return false;
    const auto number = value.get<double>();
    return range.from <= number && number <= range.to;
}

bool isPlainText(const json& value, std::size_t longest)
{
    if (!value.is_string())
        return false;
    const auto& text = value.get_ref<const std::string&>();
    const bool controls = std::ranges::any_of(
        text, [](char c) { return static_cast<unsigned char>(c) < 0x20U || c == '\x7f'; });
    return !text.empty() && !controls && characters(text) <= longest;
}

}  // namespace bathside
