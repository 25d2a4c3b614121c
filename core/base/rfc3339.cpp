#include "core/base/rfc3339.h"

#include <array>
#include <charconv>
#include <cstdio>

namespace bathside {
namespace {

using namespace std::chrono;

// Reads fixed-width fields from the front of a text; once one is missing, all later ones are.
class Fields {
public:
    explicit Fields(std::string_view text) : m_rest(text) {}

    int digits(std::size_t width)
    {
        int value = 0;
        for (std::size_t i = 0; i < width; ++i) {
            if (i >= m_rest.size() || m_rest[i] < '0' || m_rest[i] > '9')
                return fail();
            value = value * 10 + (m_rest[i] - '0');
        }
        m_rest.remove_prefix(width);
        return value;
    }

    char oneOf(std::string_view allowed)
    {
        if (m_rest.empty() || allowed.find(m_rest.front()) == std::string_view::npos) {
            fail();
            return '\0';
        }
        const char found = m_rest.front();
        m_rest.remove_prefix(1);
        return found;
    }

    [[nodiscard]] bool startsWith(char c) const { return !m_rest.empty() && m_rest.front() == c; }

    /// `.123456` as whole milliseconds, the rest cut off; nothing there is 0.
    int fraction()
    {
        if (!startsWith('.'))
            return 0;
        m_rest.remove_prefix(1);
        const std::size_t end = std::min(m_rest.find_first_not_of("0123456789"), m_rest.size());
        if (end == 0)
            return fail();
        int ms = 0;
        for (std::size_t i = 0; i < 3; ++i)
            ms = ms * 10 + (i < end ? m_rest[i] - '0' : 0);
        m_rest.remove_prefix(end);
        return ms;
    }

    [[nodiscard]] bool complete() const { return m_good && m_rest.empty(); }

private:
    int fail()
    {
        m_good = false;
        return 0;
    }

    std::string_view m_rest;
    bool m_good = true;
};

minutes readOffset(Fields& fields)
{
    const char sign = fields.oneOf("Zz+-");
    if (sign != '+' && sign != '-')
        return minutes::zero();
    const int hour = fields.digits(2);
    fields.oneOf(":");
    const int minute = fields.digits(2);
    if (hour > 23 || minute > 59)
        fields.oneOf("");  // no character fits: the text is refused
    const auto offset = hours(hour) + minutes(minute);
    return sign == '-' ? -offset : offset;
}

}  // namespace

std::string toRfc3339(WallTime at)
{
    const auto day = floor<days>(at);
    const year_month_day date(day);
    const hh_mm_ss time(at - day);
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02uT%02d:%02d:%02d.%03dZ", int(date.year()),
                  unsigned(date.month()), unsigned(date.day()), int(time.hours().count()),
                  int(time.minutes().count()), int(time.seconds().count()),
                  int(time.subseconds().count()));
    return text.data();
}

std::optional<WallTime> fromRfc3339(std::string_view text)
{
    Fields fields(text);
    const int year = fields.digits(4);
    fields.oneOf("-");
    const int month = fields.digits(2);
    fields.oneOf("-");
    const int day = fields.digits(2);
    fields.oneOf("Tt");
    const int hour = fields.digits(2);
    fields.oneOf(":");
    const int minute = fields.digits(2);
    fields.oneOf(":");
    const int second = fields.digits(2);
    const int ms = fields.fraction();
    const minutes offset = readOffset(fields);

    const year_month_day date{std::chrono::year(year), std::chrono::month(unsigned(month)),
                              std::chrono::day(unsigned(day))};
    if (!fields.complete() || !date.ok() || hour > 23 || minute > 59 || second > 60)
        return std::nullopt;
    const auto ofDay = second == 60 ? minutes(minute + 1) - milliseconds(1)
                                    : minutes(minute) + seconds(second) + milliseconds(ms);
    return WallTime(sys_days(date) + hours(hour) + ofDay - offset);
}

}  // namespace bathside
