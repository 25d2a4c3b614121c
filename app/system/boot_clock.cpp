#include "app/system/boot_clock.h"

#include <algorithm>
#include <charconv>
#include <fstream>
#include <random>
#include <string>
#include <string_view>

namespace bathside::app {
namespace {

BootId madeUp()
{
    std::random_device random;
    BootId id;
    std::ranges::generate(id, [&] { return static_cast<std::uint8_t>(random()); });
    return id;
}

}  // namespace

BootClock::BootClock(ReadClock read, BootId id) : m_read(std::move(read)), m_id(id) {}

Stamp BootClock::stampOf(const ClockReading& reading) const
{
    return {.wall = WallTime(std::chrono::floor<Millis>(reading.wall)),
            .boot = reading.boot,
            .bootId = m_id};
}

BootId readBootId(const std::filesystem::path& file)
{
    std::ifstream in(file);
    std::string line;
    std::getline(in, line);
    return parseBootId(line).value_or(madeUp());
}

std::optional<BootId> parseBootId(std::string_view text)
{
    constexpr std::string_view kForm = "xxxxxxxx-xxxx-xxxx-xxxx-xxxxxxxxxxxx";
    const auto fits = [](char is, char form) { return (is == '-') == (form == '-'); };
    if (text.size() != kForm.size() || !std::ranges::equal(text, kForm, fits))
        return std::nullopt;
    std::string digits(text);
    std::erase(digits, '-');
    BootId id{};
    for (std::size_t i = 0; i < id.size(); ++i) {
        const char* from = digits.data() + 2 * i;
        if (std::from_chars(from, from + 2, id[i], 16).ptr != from + 2)
            return std::nullopt;
    }
    return id;
}

}  // namespace bathside::app
