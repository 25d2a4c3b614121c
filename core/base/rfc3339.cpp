#include "core/base/rfc3339.h"

#include <array>
#include <charconv>

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

// By hand: an event's time is written each time it is hashed, and the C library takes ten times as
// long.
void put(std::array<char, 24>& text, std::size_t at, std::size_t width, int value)
{
    for (std::size_t i = width; i > 0; --i, value /= 10)
        text[at + i - 1] = static_cast<char>('0' + value % 10);
}

}  // namespace

void appendRfc3339(std::string& out, WallTime at)
{
    const auto day = floor<days>(at);
    const year_month_day date(day);
    const hh_mm_ss time(at - day);
    std::array<char, 24> text{"0000-00-00T00:00:00.000"};
    put(text, 0, 4, int(date.year()));
    put(text, 5, 2, int(unsigned(date.month())));
    put(text, 8, 2, int(unsigned(date.day())));
    put(text, 11, 2, int(time.hours().count()));
    put(text, 14, 2, int(time.minutes().count()));
    put(text, 17, 2, int(time.seconds().count()));
    put(text, 20, 3, int(time.subseconds().count()));
    text.back() = 'Z';
    out.append(text.data(), text.size());
}

std::string toRfc3339(WallTime at)
{
    std::string text;
    appendRfc3339(text, at);
    return text;
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
