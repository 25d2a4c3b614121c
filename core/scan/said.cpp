#include "core/scan/said.h"

#include <algorithm>

namespace bathside {
namespace {

const gs1::Value* valueOf(const ScannedCode& code, std::string_view ai)
{
    const auto* string = std::get_if<gs1::ElementString>(&code.content);
    if (string == nullptr)
        return nullptr;
    const auto found = std::ranges::find(string->elements, ai, &gs1::Element::ai);
    return found == string->elements.end() ? nullptr : &found->value;
}

template <typename T>
std::optional<T> said(const ScannedCode& code, std::string_view ai)
{
    const auto* value = valueOf(code, ai);
    return value == nullptr ? std::nullopt : std::optional(std::get<T>(*value));
}

}  // namespace

std::optional<LotId> lotSaid(const ScannedCode& code)
{
    const auto lot = said<gs1::Text>(code, "10");
    return lot ? std::optional(LotId{lot->text}) : std::nullopt;
}

std::optional<gs1::Gtin> gtinSaid(const ScannedCode& code)
{
    if (const auto* item = std::get_if<gs1::Gtin>(&code.content))
        return *item;
    const auto own = said<gs1::Gtin>(code, "01");
    return own ? own : said<gs1::Gtin>(code, "02");
}

std::optional<std::chrono::year_month_day> expirySaid(const ScannedCode& code)
{
    if (const auto date = said<gs1::Date>(code, "17"))
        return date;
    const auto time = said<gs1::DateTime>(code, "7003");
    return time ? std::optional(gs1::Date(std::chrono::floor<std::chrono::days>(*time)))
                : std::nullopt;
}

std::optional<std::string> serialSaid(const ScannedCode& code)
{
    const auto serial = said<gs1::Text>(code, "21");
    return serial ? std::optional(serial->text) : std::nullopt;
}

std::optional<std::int64_t> countSaid(const ScannedCode& code)
{
    auto count = said<gs1::Count>(code, "30");
    if (!count)
        count = said<gs1::Count>(code, "37");
    return count ? std::optional(count->count) : std::nullopt;
}

std::optional<BagCode> bagSaid(const ScannedCode& code)
{
    const auto* bag = std::get_if<BagCode>(&code.content);
    return bag == nullptr ? std::nullopt : std::optional(*bag);
}

std::optional<PersonId> personSaid(const ScannedCode& code)
{
    const auto* person = std::get_if<PersonCode>(&code.content);
    return person == nullptr ? std::nullopt : std::optional(person->person);
}

std::optional<SealCode> sealSaid(const ScannedCode& code)
{
    const auto* seal = std::get_if<SealCode>(&code.content);
    return seal == nullptr ? std::nullopt : std::optional(*seal);
}

LotMatch compared(const ScannedCode& code, const LotId& expected)
{
    if (const auto lot = lotSaid(code))
        return *lot == expected ? LotMatch::Same : LotMatch::Other;
    const auto* plain = std::get_if<PlainText>(&code.content);
    return plain != nullptr && plain->text == expected.text ? LotMatch::Same : LotMatch::NotSaid;
}

}  // namespace bathside
