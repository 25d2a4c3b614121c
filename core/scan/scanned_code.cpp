#include "core/scan/scanned_code.h"

#include <algorithm>
#include <array>

#include "core/scan/check_characters.h"

namespace bathside {
namespace {

using Read = Result<ScannedCode, ScanFault>;

constexpr std::size_t kSymbologyLength = 3;
constexpr std::size_t kGtinLength = 14;

bool isLetter(char sign) { return (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z'); }

std::string_view symbologyOf(std::string_view text)
{
    const bool isThere = text.size() >= kSymbologyLength && text[0] == ']' && isLetter(text[1]) &&
                         (isDigit(text[2]) || isLetter(text[2]));
    return text.substr(0, isThere ? kSymbologyLength : 0);
}

bool holdsElements(std::string_view symbology)
{
    constexpr std::array<std::string_view, 5> kSome{"]C1", "]e0", "]d2", "]Q3", "]J1"};
    return std::ranges::find(kSome, symbology) != kSome.end();
}

bool holdsItemNumber(std::string_view symbology)
{
    return symbology == "]E0" || symbology == "]E4";
}

bool beginsWithKey(std::string_view text, std::string_view ai, std::size_t digits)
{
    const std::string_view whole = text.substr(0, ai.size() + digits);
    return whole.starts_with(ai) && whole.size() == ai.size() + digits && !firstNoDigit(whole);
}

bool beginsInBrackets(std::string_view text)
{
    return text.size() > 2 && text[0] == '(' && isDigit(text[1]) && isDigit(text[2]);
}

/// Shows by itself that it means to be an element string.
bool meansElements(std::string_view text)
{
    constexpr std::size_t kSsccLength = 18;
    return text.contains(gs1::kSeparator) || beginsWithKey(text, "01", kGtinLength) ||
           beginsWithKey(text, "02", kGtinLength) || beginsWithKey(text, "00", kSsccLength);
}

/// A date and more: rarely anything else, though nothing says so.
bool looksLikeElements(const Result<gs1::ElementString, ScanFault>& read)
{
    return read && read->elements.size() > 1 &&
           std::holds_alternative<gs1::Date>(read->elements.front().value);
}

/// EAN-13, UPC or EAN-8, to 14 digits.
Result<gs1::Gtin, ScanFault> itemNumberFrom(std::string_view digits)
{
    constexpr std::size_t kShortest = 8;
    constexpr std::size_t kLongest = 13;
    if (const auto bad = firstNoDigit(digits))
        return failure(ScanFault{ScanFaultKind::NotADigit, *bad, {}});
    if (digits.size() < kShortest)
        return failure(ScanFault{ScanFaultKind::TooShort, digits.size(), {}});
    if (digits.size() > kLongest)
        return failure(ScanFault{ScanFaultKind::TooLong, kLongest, {}});
    if (!hasGs1CheckDigit(digits))
        return failure(ScanFault{ScanFaultKind::CheckDigit, digits.size() - 1, {}});
    return gs1::Gtin{std::string(kGtinLength - digits.size(), '0') + std::string(digits)};
}

/// The content under its symbology; a fault's place counts from the front of the whole scan.
Read under(std::string_view symbology, const Result<ScannedContent, ScanFault>& read)
{
    if (read)
        return ScannedCode{std::string(symbology), *read};
    const ScanFault& fault = read.error();
    return failure(ScanFault{fault.kind, symbology.size() + fault.at, fault.ai});
}

Result<ScannedContent, ScanFault> ownFrom(std::string_view text)
{
    const auto code = ownCodeFrom(text);
    if (!code)
        return failure(code.error());
    return std::visit([](const auto& own) { return ScannedContent(own); }, *code);
}

Read withoutSymbology(std::string_view text, std::chrono::year now)
{
    if (beginsInBrackets(text))
        return under("", gs1::bracketedFrom(text, now));
    const auto elements = gs1::elementsFrom(text, now);
    if (meansElements(text) || looksLikeElements(elements))
        return under("", elements);
    return ScannedCode{{}, PlainText{std::string(text)}};
}

}  // namespace

Read scannedCodeFrom(std::string_view text, std::chrono::year now)
{
    const std::string_view symbology = symbologyOf(text);
    const std::string_view body = text.substr(symbology.size());
    if (body.empty())
        return failure(ScanFault{ScanFaultKind::Empty, text.size(), {}});
    if (text.size() > kLongestScan)
        return failure(ScanFault{ScanFaultKind::TooMuch, kLongestScan, {}});
    if (holdsElements(symbology))
        return under(symbology, gs1::elementsFrom(body, now));
    if (holdsItemNumber(symbology))
        return under(symbology, itemNumberFrom(body));
    if (beginsAsOwnCode(body))
        return under(symbology, ownFrom(body));
    if (symbology.empty())
        return withoutSymbology(text, now);
    return ScannedCode{std::string(symbology), PlainText{std::string(body)}};
}

}  // namespace bathside
