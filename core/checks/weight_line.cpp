#include "core/checks/weight_line.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <utility>
#include <vector>

namespace bathside {
namespace {

constexpr std::size_t kLongestLine = 200;
constexpr std::int64_t kAlike = 10;  // tenths of a mg
constexpr int kInARow = 3;
constexpr double kHeaviest = 1e9;  // tenths of a mg: 100 kg

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }
bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

/// A number of the line: its value and the letters after it.
struct Found {
    double value = 0;
    std::string unit;  // in lower case
};

/// Whether a minus stands before that place, be it blanks away.
bool isNegative(std::string_view line, std::size_t at)
{
    while (at > 0 && isBlank(line[at - 1]))
        --at;
    return at > 0 && line[at - 1] == '-';
}

std::size_t skip(std::string_view line, std::size_t at, bool (*fits)(char))
{
    while (at < line.size() && fits(line[at]))
        ++at;
    return at;
}

/// The number that begins at that digit; `at` goes behind it and its unit.
Found numberAt(std::string_view line, std::size_t& at)
{
    const std::size_t from = at;
    at = skip(line, at, isDigit);
    if (at + 1 < line.size() && (line[at] == '.' || line[at] == ',') && isDigit(line[at + 1]))
        at = skip(line, at + 1, isDigit);
    std::string digits(line.substr(from, at - from));
    std::ranges::replace(digits, ',', '.');
    Found found;
    std::from_chars(digits.data(), digits.data() + digits.size(), found.value);
    if (isNegative(line, from))
        found.value = -found.value;
    const std::size_t unit = skip(line, at, isBlank), end = skip(line, unit, isLetter);
    std::ranges::transform(line.substr(unit, end - unit), std::back_inserter(found.unit), lower);
    return found;
}

// A number within a word ("N1", "2026-03-05") is none of its own where a letter is before it.
std::vector<Found> numbersIn(std::string_view line)
{
    std::vector<Found> all;
    for (std::size_t at = 0; at < line.size();) {
        if (!isDigit(line[at])) {
            ++at;
            continue;
        }
        const bool inWord = at > 0 && isLetter(line[at - 1]);
        const Found found = numberAt(line, at);
        if (!inWord)
            all.push_back(found);
    }
    return all;
}

bool hasUnit(const Found& found) { return found.unit == "g" || found.unit == "mg"; }

bool isOverload(std::string_view line)
{
    std::string rest;
    std::ranges::copy_if(line, std::back_inserter(rest), [](char c) { return !isBlank(c); });
    if (std::ranges::any_of(rest, isDigit))
        return false;
    const bool isOneSign = rest.size() >= 3 && std::ranges::count(rest, rest.front()) ==
                                                   static_cast<std::ptrdiff_t>(rest.size());
    std::ranges::transform(rest, rest.begin(), lower);
    return isOneSign || rest == "ol" || rest.starts_with("ol,") || rest.ends_with(",ol");
}

Result<Weighed, WeightFault> weightOf(const Found& found, WeightUnit unit, bool isStill)
{
    const bool isMilligrams =
        found.unit.empty() ? unit == WeightUnit::Milligrams : found.unit == "mg";
    const double tenths = found.value * (isMilligrams ? 10 : 10'000);
    if (std::abs(tenths) > kHeaviest)
        return failure(WeightFault::Unreadable);
    return Weighed{std::llround(tenths), isStill};
}

bool isStillBy(const WeightFormat& format, std::string_view line)
{
    const bool has = !format.mark.empty() && line.find(format.mark) != std::string_view::npos;
    switch (format.stillness) {
        case Stillness::StillMark:
            return has;
        case Stillness::MovingMark:
            return !has;
        case Stillness::ThreeAlike:
        case Stillness::EachLine:
            return true;
    }
    return true;
}

}  // namespace

Result<Weighed, WeightFault> weightIn(const WeightFormat& format, std::string_view line)
{
    if (std::ranges::all_of(line, isBlank))
        return failure(WeightFault::Empty);
    if (line.size() > kLongestLine)
        return failure(WeightFault::Unreadable);
    if (isOverload(line))
        return failure(WeightFault::Overload);
    const bool isStill = isStillBy(format, line);
    const auto numbers = numbersIn(line);
    const auto withUnit = std::ranges::count_if(numbers, hasUnit);
    if (withUnit == 1)
        return weightOf(*std::ranges::find_if(numbers, hasUnit), format.unit, isStill);
    if (withUnit > 1 || numbers.size() != 1)
        return failure(WeightFault::Unreadable);
    if (!numbers.front().unit.empty())
        return failure(WeightFault::OtherUnit);
    return weightOf(numbers.front(), format.unit, isStill);
}

ShotWeigher::ShotWeigher(Stillness stillness, std::int64_t expected)
    : m_stillness(stillness),
      m_least(std::max<std::int64_t>(1, expected / 10)),
      m_most(expected * 2)
{
}

bool ShotWeigher::isShot(std::int64_t weight) const
{
    return weight >= m_least && weight <= m_most;
}

bool ShotWeigher::settles(const Weighed& weight)
{
    const bool isAlike = std::abs(weight.tenthsOfMilligram - m_last) <= kAlike;
    m_alike = m_alike > 0 && isAlike ? m_alike + 1 : 1;
    m_last = weight.tenthsOfMilligram;
    return weight.isStill && (m_stillness != Stillness::ThreeAlike || m_alike >= kInARow);
}

std::optional<std::int64_t> ShotWeigher::take(const Weighed& weight)
{
    if (!settles(weight))
        return std::nullopt;
    const std::int64_t now = weight.tenthsOfMilligram;
    const auto before = m_stillness == Stillness::EachLine ? std::optional<std::int64_t>(0)
                                                           : std::exchange(m_before, now);
    return before && isShot(now - *before) ? std::optional(now - *before) : std::nullopt;
}

}  // namespace bathside
