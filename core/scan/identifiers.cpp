#include "core/scan/identifiers.h"

#include <algorithm>
#include <array>

#include "core/scan/check_characters.h"

namespace bathside::gs1 {
namespace {

using enum Form;

constexpr Identifier row(std::string_view digits, Form form, std::size_t least, std::size_t most)
{
    return {digits, digits.size(), form, least, most};
}
constexpr Identifier fixed(std::string_view digits, Form form, std::size_t length)
{
    return {digits, digits.size(), form, length, length, true};
}
/// Trade measures: six digits, at most five of them decimals.
constexpr Identifier measure(std::string_view digits)
{
    return {digits, digits.size() + 1, Measure, 6, 6, true, '5'};
}
/// Amounts of money in the local currency.
constexpr Identifier money(std::string_view digits)
{
    return {digits, digits.size() + 1, Measure, 1, 15, false, '9'};
}

// clang-format off
constexpr auto kIdentifiers = std::to_array<Identifier>({
    fixed("00", Key, 18), fixed("01", Gtin, 14), fixed("02", Gtin, 14),
    row("10", Text, 1, 20),
    fixed("11", Day, 6), fixed("12", Day, 6), fixed("13", Day, 6), fixed("15", Day, 6), fixed("16", Day, 6),
    fixed("17", Day, 6),
    fixed("20", Digits, 2),
    row("21", Text, 1, 20), row("22", Text, 1, 20),
    row("240", Text, 1, 30), row("241", Text, 1, 30), row("242", Digits, 1, 6), row("243", Text, 1, 20),
    row("250", Text, 1, 30), row("251", Text, 1, 30), row("254", Text, 1, 20),
    row("30", Count, 1, 8),
    measure("310"), measure("311"), measure("312"), measure("313"), measure("314"), measure("315"), measure("316"),
    measure("320"), measure("321"), measure("322"), measure("323"), measure("324"), measure("325"), measure("326"),
    measure("327"), measure("328"), measure("329"),
    measure("330"), measure("331"), measure("332"), measure("333"), measure("334"), measure("335"), measure("336"),
    measure("337"),
    measure("340"), measure("341"), measure("342"), measure("343"), measure("344"), measure("345"), measure("346"),
    measure("347"), measure("348"), measure("349"),
    measure("350"), measure("351"), measure("352"), measure("353"), measure("354"), measure("355"), measure("356"),
    measure("357"),
    measure("360"), measure("361"), measure("362"), measure("363"), measure("364"), measure("365"), measure("366"),
    measure("367"), measure("368"), measure("369"),
    row("37", Count, 1, 8),
    money("390"), money("392"),
    row("400", Text, 1, 30), row("402", Key, 17, 17), row("403", Text, 1, 30),
    fixed("410", Key, 13), fixed("411", Key, 13), fixed("412", Key, 13), fixed("413", Key, 13), fixed("414", Key, 13),
    fixed("415", Key, 13), fixed("416", Key, 13), fixed("417", Key, 13),
    row("420", Text, 1, 20),
    row("7003", Minute, 10, 10),
    row("710", Text, 1, 20), row("711", Text, 1, 20), row("712", Text, 1, 20), row("713", Text, 1, 20),
    row("714", Text, 1, 20),
    row("90", Text, 1, 30), row("91", Text, 1, 90), row("92", Text, 1, 90), row("93", Text, 1, 90),
    row("94", Text, 1, 90), row("95", Text, 1, 90), row("96", Text, 1, 90), row("97", Text, 1, 90),
    row("98", Text, 1, 90), row("99", Text, 1, 90),
});
// clang-format on

bool begins(std::string_view text, const Identifier& identifier)
{
    if (!text.starts_with(identifier.digits) || text.size() < identifier.length)
        return false;
    if (identifier.length == identifier.digits.size())
        return true;
    const char decimals = text[identifier.length - 1];
    return isDigit(decimals) && decimals <= identifier.lastDigit;
}

}  // namespace

const Identifier* identifierAt(std::string_view text)
{
    const auto found = std::ranges::find_if(
        kIdentifiers, [text](const Identifier& each) { return begins(text, each); });
    return found == kIdentifiers.end() ? nullptr : &*found;
}

bool isTextSign(char sign)
{
    constexpr std::string_view kOthers = "!\"%&'()*+,-./_:;<=>?";
    return isDigit(sign) || (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z') ||
           kOthers.contains(sign);
}

}  // namespace bathside::gs1
