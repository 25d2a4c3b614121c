#include "core/base/day.h"

#include <charconv>

namespace bathside {
namespace {

template <typename Number>
bool readDigits(std::string_view text, Number& number)
{
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size() && text.front() != '-';
}

std::string digits(int number, std::size_t width)
{
    const std::string text = std::to_string(number);
    return std::string(width - text.size(), '0') + text;
}

}  // namespace

std::optional<std::chrono::sys_days> dayFrom(std::string_view text)
{
    int year = 0;
    unsigned month = 0;
    unsigned day = 0;
    if (text.size() != 10 || text[4] != '-' || text[7] != '-' ||
        !readDigits(text.substr(0, 4), year) || !readDigits(text.substr(5, 2), month) ||
        !readDigits(text.substr(8, 2), day))
        return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month),
                                           std::chrono::day(day)};
    return date.ok() && year >= 1900 ? std::optional(std::chrono::sys_days(date)) : std::nullopt;
}

std::optional<Millis> timeOfDayFrom(std::string_view text)
{
    int hours = 0;
    int minutes = 0;
    int seconds = 0;
    int millis = 0;
    const bool hasMillis = text.size() == 12 && text[8] == '.';
    if ((!hasMillis && text.size() != 8) || text[2] != ':' || text[5] != ':' ||
        !readDigits(text.substr(0, 2), hours) || !readDigits(text.substr(3, 2), minutes) ||
        !readDigits(text.substr(6, 2), seconds) ||
        (hasMillis && !readDigits(text.substr(9, 3), millis)))
        return std::nullopt;
    if (hours > 47 || minutes > 59 || seconds > 59)
        return std::nullopt;
    return std::chrono::hours(hours) + std::chrono::minutes(minutes) +
           std::chrono::seconds(seconds) + Millis(millis);
}

std::string toText(std::chrono::sys_days day)
{
    const std::chrono::year_month_day date(day);
    return digits(static_cast<int>(date.year()), 4) + "-" +
           digits(static_cast<int>(static_cast<unsigned>(date.month())), 2) + "-" +
           digits(static_cast<int>(static_cast<unsigned>(date.day())), 2);
}

}  // namespace bathside
