#include "core/scan/own_code.h"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <optional>
#include <vector>

#include "core/scan/check_characters.h"

namespace bathside {
namespace {

constexpr std::string_view kBag = "BSB.";
constexpr std::string_view kPerson = "BSP.";
constexpr std::string_view kSeal = "BSS.";
constexpr std::string_view kHex = "0123456789ABCDEF";
constexpr std::size_t kDayLength = 8;
constexpr std::size_t kHashLength = 64;

bool isPlain(char sign) { return isDigit(sign) || (sign >= 'A' && sign <= 'Z'); }

std::string upper(std::string_view text)
{
    std::string result(text);
    std::ranges::transform(result, result.begin(), [](char sign) {
        return sign >= 'a' && sign <= 'z' ? static_cast<char>(sign - 'a' + 'A') : sign;
    });
    return result;
}

std::string lower(std::string_view text)
{
    std::string result(text);
    std::ranges::transform(result, result.begin(), [](char sign) {
        return sign >= 'A' && sign <= 'Z' ? static_cast<char>(sign - 'A' + 'a') : sign;
    });
    return result;
}

std::string escaped(std::string_view id)
{
    std::string text;
    for (const char sign : id) {
        const auto byte = static_cast<unsigned char>(sign);
        if (isPlain(sign))
            text += sign;
        else
            text += {'%', kHex[byte / 16], kHex[byte % 16]};
    }
    return text;
}

/// None: empty, or not as `escaped` writes it.
std::optional<std::string> unescaped(std::string_view text)
{
    std::string id;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] != '%') {
            id += text[at];
            continue;
        }
        unsigned byte = 0;
        const std::string_view hex = text.substr(at + 1, 2);
        const auto [end, error] = std::from_chars(hex.data(), hex.data() + hex.size(), byte, 16);
        if (error != std::errc() || end != hex.data() + 2)
            return std::nullopt;
        id += static_cast<char>(byte);
        at += 2;
    }
    if (id.empty() || escaped(id) != text)
        return std::nullopt;
    return id;
}

std::string fourDigits(int number)
{
    std::string text = std::to_string(number);
    return std::string(4 - std::min<std::size_t>(4, text.size()), '0') + text;
}

std::string dayText(std::chrono::year_month_day day)
{
    assert(day.ok() && int(day.year()) >= 0 && int(day.year()) <= 9999);
    const auto monthAndDay = static_cast<int>(unsigned(day.month()) * 100 + unsigned(day.day()));
    return fourDigits(int(day.year())) + fourDigits(monthAndDay);
}

std::optional<std::chrono::year_month_day> dayFrom(std::string_view text)
{
    if (text.size() != kDayLength || firstNoDigit(text))
        return std::nullopt;
    const auto number = [text](std::size_t at, std::size_t length) {
        unsigned value = 0;
        std::from_chars(text.data() + at, text.data() + at + length, value);
        return value;
    };
    const std::chrono::year_month_day day{std::chrono::year(static_cast<int>(number(0, 4))),
                                          std::chrono::month(number(4, 2)),
                                          std::chrono::day(number(6, 2))};
    return day.ok() ? std::optional(day) : std::nullopt;
}

std::string withCheck(const std::string& text) { return text + '.' + iso7064CheckCharacter(text); }

std::optional<OwnCode> bagFrom(std::string_view body)
{
    const auto dot = body.find('.');
    const auto day = dayFrom(body.substr(0, dot));
    const auto id = dot == std::string_view::npos ? std::nullopt : unescaped(body.substr(dot + 1));
    if (!day || !id)
        return std::nullopt;
    return BagCode{BagId{*id}, *day};
}

std::optional<OwnCode> personFrom(std::string_view body)
{
    const auto id = unescaped(body);
    return id ? std::optional<OwnCode>(PersonCode{PersonId{*id}}) : std::nullopt;
}

std::optional<OwnCode> sealFrom(std::string_view body)
{
    SealCode code;
    const auto dot = body.find('.');
    const std::string_view count = body.substr(0, dot);
    const auto read = std::from_chars(count.data(), count.data() + count.size(), code.count);
    if (dot == std::string_view::npos || read.ec != std::errc() || code.count < 1 ||
        std::to_string(code.count) != count)
        return std::nullopt;
    code.head = lower(body.substr(dot + 1));
    const bool isHash = code.head.size() == kHashLength &&
                        code.head.find_first_not_of("0123456789abcdef") == std::string::npos;
    return isHash ? std::optional<OwnCode>(code) : std::nullopt;
}

std::optional<OwnCode> codeFrom(std::string_view text)
{
    const std::string_view body = text.substr(kBag.size());
    if (text.starts_with(kBag))
        return bagFrom(body);
    return text.starts_with(kPerson) ? personFrom(body) : sealFrom(body);
}

struct Written {
    std::string operator()(const BagCode& code) const
    {
        assert(!code.bag.empty());
        return withCheck(std::string(kBag) + dayText(code.mixed) + '.' + escaped(code.bag.text));
    }
    std::string operator()(const PersonCode& code) const
    {
        assert(!code.person.empty());
        return withCheck(std::string(kPerson) + escaped(code.person.text));
    }
    std::string operator()(const SealCode& code) const
    {
        assert(code.count > 0 && code.head.size() == kHashLength);
        return withCheck(std::string(kSeal) + std::to_string(code.count) + '.' + upper(code.head));
    }
};

}  // namespace

std::string textOf(const OwnCode& code) { return std::visit(Written{}, code); }

bool beginsAsOwnCode(std::string_view text)
{
    const std::string start = upper(text.substr(0, kBag.size()));
    return start == kBag || start == kPerson || start == kSeal;
}

Result<OwnCode, ScanFault> ownCodeFrom(std::string_view scanned)
{
    const std::string text = upper(scanned);
    const auto last = text.rfind('.');
    if (!beginsAsOwnCode(text) || last < kBag.size() || last + 2 != text.size())
        return failure(ScanFault{ScanFaultKind::NotOurForm, 0, {}});
    const std::string_view before = std::string_view(text).substr(0, last);
    if (iso7064CheckCharacter(before) != text.back())
        return failure(ScanFault{ScanFaultKind::CheckCharacter, last + 1, {}});
    const auto code = codeFrom(before);
    if (!code)
        return failure(ScanFault{ScanFaultKind::NotOurForm, kBag.size(), {}});
    return *code;
}

}  // namespace bathside
