#include "core/plan/day_time.h"

#include <algorithm>
#include <cstdint>

namespace bathside::plan {
namespace {

std::string digits(std::int64_t number, std::size_t width)
{
    const std::string text = std::to_string(number);
    return std::string(width - std::min(width, text.size()), '0') + text;
}

}  // namespace

std::string dayTimeText(DayTime at)
{
    const auto time = std::chrono::hh_mm_ss(at);
    return (time.is_negative() ? "-" : "") + digits(time.hours().count(), 2) + ":" +
           digits(time.minutes().count(), 2) + ":" + digits(time.seconds().count(), 2) + "." +
           digits(time.subseconds().count(), 3);
}

}  // namespace bathside::plan
