#include "core/bath/line_pattern.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <set>
#include <utility>

#include "core/bath/line_text.h"
#include "core/bath/probe_reader.h"

namespace bathside {
namespace {

constexpr std::string_view kBlank = " \t";

bool isBlank(char c) { return kBlank.find(c) != std::string_view::npos; }
bool isControl(char c) { return static_cast<unsigned char>(c) < 0x20U || c == '\x7f'; }

// What may not stand beside a number whose end only a `*` or the line marks.
bool isOfANumber(char c) { return isDigit(c) || c == '+' || c == '-' || c == '.' || c == ','; }

std::size_t digitsIn(std::string_view text)
{
    return static_cast<std::size_t>(std::ranges::find_if_not(text, isDigit) - text.begin());
}

/// The length of the number at the front of `text`, as long as it can be; 0: there is none.
std::size_t numberLength(std::string_view text, char decimal)
{
    const std::size_t sign = text.starts_with('+') || text.starts_with('-') ? 1 : 0;
    const std::size_t whole = digitsIn(text.substr(sign));
    if (whole == 0)
        return 0;
    const std::size_t length = sign + whole;
    if (length == text.size() || text[length] != decimal)
        return length;
    const std::size_t parts = digitsIn(text.substr(length + 1));
    return parts == 0 ? length : length + 1 + parts;
}

double valueOf(std::string text)
{
    std::ranges::replace(text, ',', '.');
    const char* from = text.data() + (text.front() == '+' ? 1 : 0);
    double number = 0;
    std::from_chars(from, text.data() + text.size(), number, std::chars_format::fixed);
    return number;
}

}  // namespace

// Tries the pieces one after the other, each as short as it can be; a place that has failed once is
// not tried again.
class LinePattern::Match {
public:
    Match(const LinePattern& pattern, std::string_view line)
        : m_pieces(pattern.m_pieces),
          m_decimal(pattern.m_decimal == DecimalSign::Comma ? ',' : '.'),
          m_line(line)
    {
    }

    [[nodiscard]] std::optional<std::string_view> number()
    {
        return fits(0, 0) ? std::optional(m_number) : std::nullopt;
    }

private:
    bool fits(std::size_t piece, std::size_t at)
    {
        if (piece == m_pieces.size())
            return at == m_line.size();
        if (m_failed.contains({piece, at}))
            return false;
        const bool found = fitsHere(piece, at);
        if (!found)
            m_failed.emplace(piece, at);
        return found;
    }

    bool fitsHere(std::size_t piece, std::size_t at)
    {
        switch (m_pieces[piece].kind) {
            case Kind::Character:
                return at < m_line.size() && m_line[at] == m_pieces[piece].character &&
                       fits(piece + 1, at + 1);
            case Kind::Blanks:
                return fitsBlanks(piece, at);
            case Kind::Anything:
                return fitsAnything(piece, at);
            case Kind::Number:
                return fitsNumber(piece, at);
        }
        return false;
    }

    bool fitsBlanks(std::size_t piece, std::size_t at)
    {
        std::size_t end = at;
        while (end < m_line.size() && isBlank(m_line[end]))
            ++end;
        const bool atAnEnd = at == 0 || end == m_line.size();
        return (end > at || atAnEnd) && fits(piece + 1, end);
    }

    bool fitsAnything(std::size_t piece, std::size_t at)
    {
        for (std::size_t end = at; end <= m_line.size(); ++end)
            if (fits(piece + 1, end))
                return true;
        return false;
    }

    bool fitsNumber(std::size_t piece, std::size_t at)
    {
        const std::size_t length = numberLength(m_line.substr(at), m_decimal);
        const std::size_t end = at + length;
        if (length == 0 || !isOpen(piece, at, end) || !fits(piece + 1, end))
            return false;
        m_number = m_line.substr(at, length);
        return true;
    }

    [[nodiscard]] bool isOpen(std::size_t piece, std::size_t at, std::size_t end) const
    {
        const auto isNamed = [&](std::size_t other) {
            return other < m_pieces.size() && m_pieces[other].kind == Kind::Character;
        };
        const bool before = at > 0 && !isNamed(piece - 1) && isOfANumber(m_line[at - 1]);
        const bool after = end < m_line.size() && !isNamed(piece + 1) && isOfANumber(m_line[end]);
        return !before && !after;
    }

    const std::vector<Piece>& m_pieces;
    char m_decimal;
    std::string_view m_line;
    std::string_view m_number;
    std::set<std::pair<std::size_t, std::size_t>> m_failed;
};

LinePattern::LinePattern(std::vector<Piece> pieces, DecimalSign decimal)
    : m_pieces(std::move(pieces)), m_decimal(decimal)
{
}

Result<LinePattern, PatternFault> LinePattern::from(std::string_view pattern, DecimalSign decimal)
{
    if (pattern.size() > kLongest)
        return failure(PatternFault::TooLong);
    if (std::ranges::any_of(pattern, isControl))
        return failure(PatternFault::NotText);
    std::vector<Piece> pieces;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const char c = pattern[i];
        if (c == '\\' && i + 1 == pattern.size())
            return failure(PatternFault::OpenEscape);
        if (c == '\\')
            pieces.push_back({Kind::Character, pattern[++i]});
        else if (c == '#')
            pieces.push_back({Kind::Number, 0});
        else if (c == '*')
            pieces.push_back({Kind::Anything, 0});
        else if (c != ' ')
            pieces.push_back({Kind::Character, c});
        else if (pieces.empty() || pieces.back().kind != Kind::Blanks)
            pieces.push_back({Kind::Blanks, 0});
    }
    const auto numbers = std::ranges::count(pieces, Kind::Number, &Piece::kind);
    if (numbers != 1)
        return failure(numbers == 0 ? PatternFault::NoNumber : PatternFault::TwoNumbers);
    return LinePattern(std::move(pieces), decimal);
}

Result<double, ReadingFault> LinePattern::numberIn(std::string_view line) const
{
    line = trimmed(line);
    if (line.empty())
        return failure(ReadingFault::Empty);
    if (line.size() > kLongestLine)
        return failure(ReadingFault::Unreadable);
    const auto number = Match(*this, line).number();
    if (!number)
        return failure(ReadingFault::Unreadable);
    return valueOf(std::string(*number));
}

namespace {

Result<double, ReadingFault> meant(std::monostate, double celsius) { return celsius; }
Result<double, ReadingFault> meant(const auto& element, double ohm)
{
    return celsiusOf(element, ohm);
}

}  // namespace

std::variant<MilliCelsius, ReadingFault> readLine(const LinePattern& pattern,
                                                  const LineMeaning& meaning, std::string_view line)
{
    const auto number = pattern.numberIn(line);
    if (!number)
        return number.error();
    const auto celsius =
        std::visit([&](const auto& what) { return meant(what, *number); }, meaning);
    if (!celsius)
        return celsius.error();
    if (!(*celsius >= kCelsius.from && *celsius <= kCelsius.to))
        return ReadingFault::Implausible;
    return MilliCelsius{std::llround(*celsius * 1000)};
}

}  // namespace bathside
