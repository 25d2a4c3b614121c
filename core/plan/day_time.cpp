#include "core/plan/day_time.h"

#include <algorithm>
#include <cstdint>

namespace bathside::plan {
namespace {

constexpr std::size_t kLengthOfSeconds = 8;  // "HH:MM:SS"
constexpr std::size_t kMostDecimals = 3;

std::string digits(std::int64_t number, std::size_t width)
{
    const std::string text = std::to_string(number);
    return std::string(width - std::min(width, text.size()), '0') + text;
}

bool areDigits(std::string_view text)
{
    return !text.empty() && std::ranges::all_of(text, [](char c) { return '0' <= c && c <= '9'; });
}

std::int64_t numberOf(std::string_view digits)
{
    std::int64_t number = 0;
    for (const char digit : digits)
        number = 10 * number + (digit - '0');
    return number;
}

/// ".5" is 500 ms.
std::optional<Millis> fractionFrom(std::string_view text)
{
    if (text.empty())
        return Millis(0);
    std::string decimals(text.substr(1));
    if (text.front() != '.' || !areDigits(decimals) || decimals.size() > kMostDecimals)
        return std::nullopt;
    decimals.resize(kMostDecimals, '0');
    return Millis(numberOf(decimals));
}

}  // namespace

std::string dayTimeText(DayTime at)
{
    const auto time = std::chrono::hh_mm_ss(at);
    return (time.is_negative() ? "-" : "") + digits(time.hours().count(), 2) + ":" +
           digits(time.minutes().count(), 2) + ":" + digits(time.seconds().count(), 2) + "." +
           digits(time.subseconds().count(), kMostDecimals);
}

std::optional<DayTime> dayTimeFrom(std::string_view text)
{
    if (text.size() < kLengthOfSeconds || text[2] != ':' || text[5] != ':')
        return std::nullopt;
    const auto fraction = fractionFrom(text.substr(kLengthOfSeconds));
    const std::string_view hours = text.substr(0, 2);
    const std::string_view minutes = text.substr(3, 2);
    const std::string_view seconds = text.substr(6, 2);
    if (!fraction || !areDigits(hours) || !areDigits(minutes) || !areDigits(seconds) ||
        numberOf(minutes) > 59 || numberOf(seconds) > 59)
        return std::nullopt;
    return std::chrono::hours(numberOf(hours)) + std::chrono::minutes(numberOf(minutes)) +
           std::chrono::seconds(numberOf(seconds)) + *fraction;
}

}  // namespace bathside::plan
