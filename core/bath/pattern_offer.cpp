#include "core/bath/pattern_offer.h"

#include <algorithm>

#include "core/bath/line_text.h"

namespace bathside {
namespace {

struct Piece {
    std::string_view text;
    bool isNumber = false;
};

bool isSign(char c) { return c == '+' || c == '-'; }
bool isDecimal(char c) { return c == '.' || c == ','; }
bool isPlain(char c) { return c >= ' ' && c <= '~'; }

std::size_t digitsAt(std::string_view line, std::size_t at)
{
    const auto* end = std::ranges::find_if_not(line.substr(at), isDigit);
    return static_cast<std::size_t>(end - line.substr(at).begin());
}

/// A sign belongs to the number unless another number stands right before it, as in a date.
std::size_t numberAt(std::string_view line, std::size_t at)
{
    const bool hasSign = isSign(line[at]) && (at == 0 || !isDigit(line[at - 1]));
    const std::size_t sign = hasSign ? 1 : 0;
    const std::size_t whole = digitsAt(line, at + sign);
    if (whole == 0)
        return 0;
    const std::size_t length = sign + whole;
    if (at + length >= line.size() || !isDecimal(line[at + length]))
        return length;
    const std::size_t parts = digitsAt(line, at + length + 1);
    return parts == 0 ? length : length + 1 + parts;
}

std::vector<Piece> piecesOf(std::string_view line)
{
    std::vector<Piece> pieces;
    for (std::size_t at = 0; at < line.size();) {
        const std::size_t number = numberAt(line, at);
        const std::size_t length = std::max<std::size_t>(number, 1);
        pieces.push_back({line.substr(at, length), number > 0});
        at += length;
    }
    return pieces;
}

void append(std::string& pattern, std::string_view text)
{
    if (text == "*" && pattern.ends_with('*') && !pattern.ends_with("\\*"))
        return;
    pattern += text;
}

void appendAsItIs(std::string& pattern, char c)
{
    constexpr std::string_view kMeaning = "#*\\";
    if (!isPlain(c))
        return append(pattern, "*");
    if (kMeaning.find(c) != std::string_view::npos)
        pattern += '\\';
    pattern += c;
}

std::string patternFor(const std::vector<Piece>& pieces, std::size_t number)
{
    std::string pattern;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (i == number)
            append(pattern, "#");
        else if (pieces[i].isNumber)
            append(pattern, "*");
        else
            appendAsItIs(pattern, pieces[i].text.front());
    }
    return pattern;
}

}  // namespace

std::vector<OfferedPattern> patternsFor(std::string_view line)
{
    if (line.size() > LinePattern::kLongestLine)
        return {};
    line = trimmed(line);
    if (line.empty())
        return {};
    const std::vector<Piece> pieces = piecesOf(line);
    std::vector<OfferedPattern> offered;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (!pieces[i].isNumber)
            continue;
        const bool hasComma = pieces[i].text.find(',') != std::string_view::npos;
        OfferedPattern offer{patternFor(pieces, i),
                             hasComma ? DecimalSign::Comma : DecimalSign::Point, 0};
        const auto pattern = LinePattern::from(offer.pattern, offer.decimal);
        const auto itself = LinePattern::from("#", offer.decimal);
        const auto read = pattern ? pattern->numberIn(line) : failure(ReadingFault::Unreadable);
        if (!read || read != itself->numberIn(pieces[i].text))
            continue;
        offer.number = *read;
        offered.push_back(std::move(offer));
    }
    return offered;
}

}  // namespace bathside
