#include "app/cli/scan_text.h"

#include <array>
#include <string_view>
#include <utility>

#include "app/cli/verb.h"
#include "core/base/rfc3339.h"
#include "core/scan/said.h"
#include "core/trail/json_text.h"

namespace bathside::cli {
namespace {

constexpr std::size_t kDateLength = 10;
constexpr std::size_t kMinuteLength = 16;

/// "2027-12-31T10:30", without an offset: a label has none.
std::string minuteText(gs1::DateTime at)
{
    return toRfc3339(WallTime(at.time_since_epoch())).substr(0, kMinuteLength);
}

std::string dateText(std::chrono::year_month_day date)
{
    return toRfc3339(std::chrono::sys_days(date)).substr(0, kDateLength);
}

std::string decimalText(const gs1::Measure& measure)
{
    std::string digits = std::to_string(measure.amount);
    const auto decimals = static_cast<std::size_t>(measure.decimals);
    if (digits.size() <= decimals)
        digits.insert(0, decimals + 1 - digits.size(), '0');
    if (decimals > 0)
        digits.insert(digits.size() - decimals, ".");
    return digits;
}

struct ValueText {
    std::string operator()(const gs1::Gtin& gtin) const { return gtin.digits; }
    std::string operator()(const gs1::Key& key) const { return key.digits; }
    std::string operator()(const gs1::Text& text) const { return text.text; }
    std::string operator()(const gs1::Count& count) const { return std::to_string(count.count); }
    std::string operator()(const gs1::Measure& measure) const { return decimalText(measure); }
    std::string operator()(const gs1::Date& date) const { return dateText(date); }
    std::string operator()(const gs1::DateTime& time) const { return minuteText(time); }
};

std::string textOf(const gs1::Value& value) { return std::visit(ValueText{}, value); }

/// One JSON object, member by member.
class JsonObject {
public:
    void text(std::string_view key, std::string_view value)
    {
        member(key);
        appendJsonString(m_text, value);
    }
    void raw(std::string_view key, std::string_view value) { member(key) += value; }
    [[nodiscard]] std::string whole() const { return m_text + "}"; }

private:
    std::string& member(std::string_view key)
    {
        if (m_text.size() > 1)
            m_text += ',';
        appendJsonString(m_text, key);
        return m_text += ':';
    }
    std::string m_text = "{";
};

/// Counts and measures as numbers, all else as text.
void addValue(JsonObject& object, const gs1::Value& value)
{
    const bool isNumber =
        std::holds_alternative<gs1::Count>(value) || std::holds_alternative<gs1::Measure>(value);
    if (isNumber)
        object.raw("value", textOf(value));
    else
        object.text("value", textOf(value));
}

std::string jsonOf(const gs1::ElementString& string)
{
    std::string text;
    for (const gs1::Element& element : string.elements) {
        JsonObject object;
        object.text("ai", element.ai);
        object.text("data", element.data);
        addValue(object, element.value);
        text += (text.empty() ? "[" : ",") + object.whole();
    }
    return text + "]";
}

struct AddContent {
    JsonObject& object;

    void operator()(const gs1::ElementString& string) const
    {
        object.text("kind", "elements");
        object.raw("elements", jsonOf(string));
    }
    void operator()(const gs1::Gtin&) const { object.text("kind", "item"); }
    void operator()(const BagCode& code) const
    {
        object.text("kind", "bag");
        object.text("bag", code.bag.text);
        object.text("mixed", dateText(code.mixed));
    }
    void operator()(const PersonCode& code) const
    {
        object.text("kind", "person");
        object.text("person", code.person.text);
    }
    void operator()(const SealCode& code) const
    {
        object.text("kind", "seal");
        object.raw("count", std::to_string(code.count));
        object.text("head", code.head);
    }
    void operator()(const PlainText& plain) const
    {
        object.text("kind", "plain");
        object.text("text", plain.text);
    }
};

void addSaid(JsonObject& object, const ScannedCode& code)
{
    if (const auto gtin = gtinSaid(code))
        object.text("gtin", gtin->digits);
    if (const auto lot = lotSaid(code))
        object.text("lot", lot->text);
    if (const auto expiry = expirySaid(code))
        object.text("expiry", dateText(*expiry));
    if (const auto serial = serialSaid(code))
        object.text("serial", *serial);
    if (const auto count = countSaid(code))
        object.raw("count", std::to_string(*count));
}

/// What an element is called; those with decimals by their first three digits.
std::string_view titleOf(std::string_view ai)
{
    using Row = std::pair<std::string_view, std::string_view>;
    constexpr std::array<Row, 27> kTitles{{
        {"00", "logistic unit"},
        {"01", "trade item"},
        {"02", "trade items within"},
        {"10", "lot"},
        {"11", "produced"},
        {"12", "due"},
        {"13", "packed"},
        {"15", "best before"},
        {"16", "sell by"},
        {"17", "use by"},
        {"20", "variant"},
        {"21", "serial number"},
        {"240", "further number"},
        {"30", "count"},
        {"310", "net weight, kg"},
        {"37", "count within"},
        {"392", "amount payable"},
        {"400", "order number"},
        {"410", "ship to"},
        {"411", "bill to"},
        {"412", "purchased from"},
        {"413", "ship for"},
        {"414", "location"},
        {"415", "invoicing party"},
        {"416", "production site"},
        {"417", "party"},
        {"7003", "use by"},
    }};
    for (const auto& [digits, title] : kTitles)
        if (ai == digits || (ai.size() == 4 && digits.size() == 3 && ai.starts_with(digits)))
            return title;
    return "";
}

struct ContentWords {
    std::string operator()(const gs1::ElementString& string) const
    {
        std::string text;
        for (const gs1::Element& element : string.elements) {
            const std::string title(titleOf(element.ai));
            text += "(" + element.ai + ") " + (title.empty() ? "" : title + ": ") +
                    textOf(element.value) + "\n";
        }
        return text;
    }
    std::string operator()(const gs1::Gtin& gtin) const
    {
        return "trade item: " + gtin.digits + "\n";
    }
    std::string operator()(const BagCode& code) const
    {
        return "bag " + shown(code.bag.text) + ", mixed on " + dateText(code.mixed) + "\n";
    }
    std::string operator()(const PersonCode& code) const
    {
        return "person " + shown(code.person.text) + "\n";
    }
    std::string operator()(const SealCode& code) const
    {
        return "seal: head " + std::to_string(code.count) + ":" + code.head + "\n";
    }
    std::string operator()(const PlainText& plain) const
    {
        return "plain text: " + shown(plain.text) + "\n";
    }
};

std::string reasonOf(ScanFaultKind kind)
{
    switch (kind) {
        case ScanFaultKind::Empty:
            return "nothing";
        case ScanFaultKind::TooMuch:
            return "more than a symbol can hold";
        case ScanFaultKind::UnknownIdentifier:
            return "no known application identifier begins here";
        case ScanFaultKind::TooShort:
            return "too few signs";
        case ScanFaultKind::TooLong:
            return "too many signs; a separator may be missing";
        case ScanFaultKind::NotADigit:
            return "a sign that is no digit";
        case ScanFaultKind::SignNotAllowed:
            return "a sign that GS1 does not allow";
        case ScanFaultKind::CheckDigit:
            return "the check digit is wrong";
        case ScanFaultKind::NoSuchMonth:
            return "there is no such month";
        case ScanFaultKind::NoSuchDay:
            return "that month has no such day";
        case ScanFaultKind::NoSuchTime:
            return "there is no such time of day";
        case ScanFaultKind::Contradiction:
            return "the identifier comes twice, with different data";
        case ScanFaultKind::NotOurForm:
            return "it begins like a Bathside code and does not go on like one";
        case ScanFaultKind::CheckCharacter:
            return "the check character is wrong: misread, or typed by another keyboard layout";
    }
    return {};
}

}  // namespace

std::string jsonOf(const ScannedCode& code)
{
    JsonObject object;
    std::visit(AddContent{object}, code.content);
    if (!code.symbology.empty())
        object.text("symbology", code.symbology);
    addSaid(object, code);
    return object.whole();
}

std::string jsonOf(const ScanFault& fault)
{
    JsonObject object;
    object.text("kind", "fault");
    object.text("fault", nameOf(fault.kind));
    object.raw("at", std::to_string(fault.at));
    if (!fault.ai.empty())
        object.text("ai", fault.ai);
    return object.whole();
}

std::string wordsOf(const ScannedCode& code) { return std::visit(ContentWords{}, code.content); }

std::string sentenceOf(const ScanFault& fault)
{
    if (fault.kind == ScanFaultKind::Empty || fault.kind == ScanFaultKind::TooMuch)
        return reasonOf(fault.kind);
    const std::string where = "sign " + std::to_string(fault.at + 1);
    const std::string ai = fault.ai.empty() ? "" : ", in (" + fault.ai + ")";
    return where + ai + ": " + reasonOf(fault.kind);
}

}  // namespace bathside::cli
