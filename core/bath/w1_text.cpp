#include "core/bath/w1_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <string>

#include "core/bath/line_text.h"

namespace bathside {
namespace {

constexpr std::size_t kBytes = 9;
using Scratchpad = std::array<std::uint8_t, kBytes>;

constexpr std::int64_t kPowerOn = 85'000;
constexpr std::int64_t kTooLittlePower = 127'937;  // 127.9375 °C, cut to m°C by the kernel
constexpr std::int64_t kOpenLine = -127'000;
constexpr std::int64_t kSensorLowest = -55'000;  // what the sensors can measure
constexpr std::int64_t kSensorHighest = 125'000;

/// The next word, taken off the front of `text`; empty at the end.
std::string_view word(std::string_view& text)
{
    text.remove_prefix(std::min(text.find_first_not_of(kAround), text.size()));
    const auto found = text.substr(0, text.find_first_of(kAround));
    text.remove_prefix(found.size());
    return found;
}

template <typename Number>
std::optional<Number> numberIn(std::string_view text, int base)
{
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number, base);
    if (error != std::errc() || end != text.data() + text.size())
        return std::nullopt;
    return number;
}

std::optional<std::uint8_t> byteIn(std::string_view text)
{
    return text.size() == 2 ? numberIn<std::uint8_t>(text, 16) : std::nullopt;
}

std::optional<Scratchpad> bytesAt(std::string_view& text)
{
    Scratchpad bytes{};
    for (std::uint8_t& byte : bytes) {
        const auto found = byteIn(word(text));
        if (!found)
            return std::nullopt;
        byte = *found;
    }
    return bytes;
}

bool isWord(std::string_view text, std::string_view upper)
{
    return std::ranges::equal(text, upper, [](char a, char b) {
        return (a >= 'a' && a <= 'z' ? static_cast<char>(a - 'a' + 'A') : a) == b;
    });
}

struct FirstLine {
    Scratchpad bytes{};
    std::uint8_t crc = 0;
    bool yes = false;
};

std::optional<FirstLine> firstLine(std::string_view line)
{
    const auto bytes = bytesAt(line);
    if (!bytes || word(line) != ":")
        return std::nullopt;
    const std::string_view crcWord = word(line);
    const auto crc = crcWord.starts_with("crc=") ? byteIn(crcWord.substr(4)) : std::nullopt;
    const std::string_view answer = word(line);
    const bool isAnswer = isWord(answer, "YES") || isWord(answer, "NO");
    if (!crc || !isAnswer || !word(line).empty())
        return std::nullopt;
    return FirstLine{*bytes, *crc, isWord(answer, "YES")};
}

bool isSound(const FirstLine& line)
{
    const auto computed = w1Crc(std::span(line.bytes).first(kBytes - 1));
    return line.yes && computed == line.bytes.back() && computed == line.crc;
}

/// `t=` of the second line; none: it is another form, or other bytes than the first line's.
std::optional<std::int64_t> secondLine(std::string_view line, const Scratchpad& bytes)
{
    if (bytesAt(line) != bytes)
        return std::nullopt;
    const std::string_view value = word(line);
    if (!value.starts_with("t=") || !word(line).empty())
        return std::nullopt;
    return numberIn<std::int64_t>(value.substr(2), 10);
}

std::variant<MilliCelsius, ReadingFault> measured(std::int64_t value, const Scratchpad& bytes)
{
    constexpr std::size_t kByteSix = 6;
    constexpr std::uint8_t kNotConverted = 0x0c;
    if (value == kPowerOn)
        return ReadingFault::PowerOn;
    if (value == kTooLittlePower && bytes[kByteSix] == kNotConverted)
        return ReadingFault::PowerOn;
    if (value == kOpenLine)
        return ReadingFault::OpenLine;
    if (value < kSensorLowest || value > kSensorHighest)
        return ReadingFault::Implausible;
    return MilliCelsius{value};
}

}  // namespace

std::uint8_t w1Crc(std::span<const std::uint8_t> bytes)
{
    constexpr unsigned kReflected = 0x8c;
    unsigned crc = 0;
    for (const std::uint8_t byte : bytes) {
        crc ^= byte;
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc & 1U) != 0 ? (crc >> 1U) ^ kReflected : crc >> 1U;
    }
    return static_cast<std::uint8_t>(crc);
}

std::variant<MilliCelsius, ReadingFault> readW1(std::string_view text)
{
    text = trimmed(text);
    if (text.empty())
        return ReadingFault::Empty;
    const auto lineEnd = text.find('\n');
    const auto first = firstLine(text.substr(0, lineEnd));
    if (!first)
        return ReadingFault::Unreadable;
    if (std::ranges::all_of(first->bytes, [](std::uint8_t byte) { return byte == 0; }))
        return ReadingFault::Shorted;
    if (!isSound(*first))
        return ReadingFault::CheckFailed;
    if (lineEnd == std::string_view::npos)
        return ReadingFault::Unreadable;
    const auto value = secondLine(text.substr(lineEnd + 1), first->bytes);
    if (!value)
        return ReadingFault::Unreadable;
    return measured(*value, first->bytes);
}

}  // namespace bathside
