#include "core/scan/element_string.h"

#include <algorithm>

#include "core/scan/check_characters.h"
#include "core/scan/element_value.h"
#include "core/scan/identifiers.h"

namespace bathside::gs1 {
namespace {

constexpr int kYearsBack = 49;
constexpr int kYearsAhead = 50;
constexpr int kCentury = 100;

/// An element as cut out of the text.
struct Piece {
    const Identifier* identifier = nullptr;
    std::string_view ai;
    std::string_view data;
    std::size_t at = 0;  // of the data
};
using Cut = Result<std::vector<Piece>, ScanFault>;

std::unexpected<ScanFault> unknown(std::size_t at)
{
    return failure(ScanFault{ScanFaultKind::UnknownIdentifier, at, {}});
}

Piece pieceAt(std::string_view text, std::size_t at, const Identifier& identifier)
{
    const auto from = at + identifier.length;
    std::string_view data = text.substr(from, text.substr(from).find(kSeparator));
    if (identifier.fixed)
        data = data.substr(0, identifier.most);
    return {&identifier, text.substr(at, identifier.length), data, from};
}

Cut cutAtSeparators(std::string_view text)
{
    std::vector<Piece> pieces;
    for (std::size_t at = text.starts_with(kSeparator) ? 1 : 0; at < text.size();) {
        const Identifier* identifier = identifierAt(text.substr(at));
        if (identifier == nullptr)
            return unknown(at);
        pieces.push_back(pieceAt(text, at, *identifier));
        at = pieces.back().at + pieces.back().data.size();
        if (at < text.size() && text[at] == kSeparator)
            ++at;
    }
    return pieces;
}

/// The identifier of "(01)" at the front of `text`; null: there is none.
const Identifier* bracketAt(std::string_view text)
{
    if (!text.starts_with('('))
        return nullptr;
    const Identifier* found = identifierAt(text.substr(1));
    return found != nullptr && text.substr(1 + found->length).starts_with(')') ? found : nullptr;
}

std::size_t nextBracket(std::string_view text, std::size_t from)
{
    while (from < text.size() && bracketAt(text.substr(from)) == nullptr)
        ++from;
    return from;
}

Cut cutAtBrackets(std::string_view text)
{
    std::vector<Piece> pieces;
    for (std::size_t at = 0; at < text.size();) {
        const Identifier* identifier = bracketAt(text.substr(at));
        if (identifier == nullptr)
            return unknown(at);
        const auto from = at + identifier->length + 2;
        const auto to = nextBracket(text, from);
        std::string_view data = text.substr(from, to - from);
        data = data.substr(0, data.find_last_not_of(' ') + 1);
        pieces.push_back({identifier, text.substr(at + 1, identifier->length), data, from});
        at = to;
    }
    return pieces;
}

/// Adds what the piece says; whatever was said before in the same words is left.
Result<void, ScanFault> add(ElementString& elements, const Piece& piece, std::chrono::year now)
{
    const std::string ai(piece.ai);
    auto value = valueOf(*piece.identifier, piece.data, ai.back() - '0', now);
    if (!value)
        return failure(ScanFault{value.error().kind, piece.at + value.error().at, ai});
    const auto said = std::ranges::find(elements.elements, ai, &Element::ai);
    if (said == elements.elements.end())
        elements.elements.push_back({ai, std::string(piece.data), *std::move(value)});
    else if (said->data != piece.data)
        return failure(ScanFault{ScanFaultKind::Contradiction, piece.at, ai});
    return {};
}

Result<ElementString, ScanFault> valued(const Cut& pieces, std::chrono::year now)
{
    if (!pieces)
        return failure(pieces.error());
    ElementString result;
    for (const Piece& piece : *pieces)
        if (const auto added = add(result, piece, now); !added)
            return failure(added.error());
    if (result.elements.empty())
        return failure(ScanFault{});
    return result;
}

}  // namespace

std::chrono::year yearOf(int twoDigits, std::chrono::year now)
{
    const int year = int(now) - int(now) % kCentury + twoDigits;
    if (year - int(now) > kYearsAhead)
        return std::chrono::year(year - kCentury);
    if (int(now) - year > kYearsBack)
        return std::chrono::year(year + kCentury);
    return std::chrono::year(year);
}

Result<ElementString, ScanFault> elementsFrom(std::string_view text, std::chrono::year now)
{
    return valued(cutAtSeparators(text), now);
}

Result<ElementString, ScanFault> bracketedFrom(std::string_view text, std::chrono::year now)
{
    return valued(cutAtBrackets(text), now);
}

std::string bracketed(const ElementString& elements)
{
    std::string text;
    for (const Element& element : elements.elements)
        text += '(' + element.ai + ')' + element.data;
    return text;
}

std::string scannedForm(const ElementString& elements)
{
    std::string text;
    bool open = false;
    for (const Element& element : elements.elements) {
        if (open)
            text += kSeparator;
        text += element.ai + element.data;
        open = !identifierAt(element.ai)->fixed;
    }
    return text;
}

}  // namespace bathside::gs1
