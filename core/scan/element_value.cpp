#include "core/scan/element_value.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include "core/scan/check_characters.h"

namespace bathside::gs1 {
namespace {

using std::chrono::day;
using std::chrono::month;

std::unexpected<ScanFault> fault(ScanFaultKind kind, std::size_t at)
{
    return failure(ScanFault{kind, at, {}});
}

std::int64_t numberIn(std::string_view digits)
{
    std::int64_t number = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return number;
}

unsigned twoDigits(std::string_view data, std::size_t at)
{
    return static_cast<unsigned>(numberIn(data.substr(at, 2)));
}

enum class DayZero { IsLast, IsNone };

Result<Date, ScanFault> dateIn(std::string_view data, std::chrono::year now, DayZero zero)
{
    const auto year = yearOf(static_cast<int>(twoDigits(data, 0)), now);
    const month inMonth{twoDigits(data, 2)};
    if (!inMonth.ok())
        return fault(ScanFaultKind::NoSuchMonth, 2);
    const unsigned onDay = twoDigits(data, 4);
    if (onDay == 0 && zero == DayZero::IsLast)
        return Date(year / inMonth / std::chrono::last);
    const Date date = year / inMonth / day(onDay);
    if (!date.ok())
        return fault(ScanFaultKind::NoSuchDay, 4);
    return date;
}

Result<Value, ScanFault> dateTimeIn(std::string_view data, std::chrono::year now)
{
    const auto date = dateIn(data, now, DayZero::IsNone);
    if (!date)
        return failure(date.error());
    const std::chrono::hours hours(twoDigits(data, 6));
    const std::chrono::minutes minutes(twoDigits(data, 8));
    if (hours >= std::chrono::days(1))
        return fault(ScanFaultKind::NoSuchTime, 6);
    if (minutes >= std::chrono::hours(1))
        return fault(ScanFaultKind::NoSuchTime, 8);
    return DateTime(std::chrono::local_days(*date) + hours + minutes);
}

/// What is wrong with the signs or the length, before anything is made of them.
std::optional<ScanFault> flawOf(const Identifier& identifier, std::string_view data)
{
    const auto bad = identifier.form == Form::Text ? std::ranges::find_if_not(data, isTextSign)
                                                   : std::ranges::find_if_not(data, isDigit);
    const auto at = static_cast<std::size_t>(bad - data.begin());
    if (at < std::min(data.size(), identifier.most))
        return ScanFault{identifier.form == Form::Text ? ScanFaultKind::SignNotAllowed
                                                       : ScanFaultKind::NotADigit,
                         at,
                         {}};
    if (data.size() > identifier.most)
        return ScanFault{ScanFaultKind::TooLong, identifier.most, {}};
    if (data.size() < identifier.least)
        return ScanFault{ScanFaultKind::TooShort, data.size(), {}};
    return std::nullopt;
}

}  // namespace

Result<Value, ScanFault> valueOf(const Identifier& identifier, std::string_view data, int decimals,
                                 std::chrono::year now)
{
    if (auto flaw = flawOf(identifier, data))
        return failure(*std::move(flaw));
    switch (identifier.form) {
        case Form::Gtin:
        case Form::Key:
            if (!hasGs1CheckDigit(data))
                return fault(ScanFaultKind::CheckDigit, data.size() - 1);
            if (identifier.form == Form::Gtin)
                return Gtin{std::string(data)};
            return Key{std::string(data)};
        case Form::Day:
            return dateIn(data, now, DayZero::IsLast);
        case Form::Minute:
            return dateTimeIn(data, now);
        case Form::Count:
            return Count{numberIn(data)};
        case Form::Measure:
            return Measure{numberIn(data), decimals};
        case Form::Digits:
        case Form::Text:
            return Text{std::string(data)};
    }
    return fault(ScanFaultKind::UnknownIdentifier, 0);
}

}  // namespace bathside::gs1
