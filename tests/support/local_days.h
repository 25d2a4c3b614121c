#pragma once

// Local days as published, and a small table of zones for tests without a tz database.

#include <algorithm>
#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/base/local_days.h"

namespace bathside::test {

struct LocalDayRow {
    const char* name;
    const char* zone;
    std::chrono::year_month_day date;
    std::int64_t start;  // seconds since 1970-01-01T00:00Z
    std::int64_t end;
};

/// Published: the tz database, release 2025b; read out with Python's zoneinfo.
inline std::vector<LocalDayRow> publishedDays()
{
    using namespace std::chrono_literals;
    using std::chrono::February, std::chrono::March, std::chrono::April, std::chrono::October,
        std::chrono::November;
    return {
        {"AmsterdamOf23Hours", "Europe/Amsterdam", 2026y / March / 29, 1774738800, 1774821600},
        {"AmsterdamOf25Hours", "Europe/Amsterdam", 2026y / October / 25, 1792879200, 1792969200},
        {"NewYorkOf23Hours", "America/New_York", 2026y / March / 8, 1772946000, 1773028800},
        {"NewYorkOf25Hours", "America/New_York", 2026y / November / 1, 1793505600, 1793595600},
        {"ChicagoOf23Hours", "America/Chicago", 2026y / March / 8, 1772949600, 1773032400},
        {"LondonOf25Hours", "Europe/London", 2026y / October / 25, 1792882800, 1792972800},
        {"LordHoweOf24AndAHalfHours", "Australia/Lord_Howe", 2025y / April / 6, 1743858000,
         1743946200},
        {"CairoBeginsAtOne", "Africa/Cairo", 2025y / April / 25, 1745532000, 1745614800},
        {"CairoOf25Hours", "Africa/Cairo", 2025y / October / 30, 1761771600, 1761861600},
        {"SaoPauloOf25Hours", "America/Sao_Paulo", 2019y / February / 16, 1550282400, 1550372400},
        {"BeirutBeginsAtOne", "Asia/Beirut", 2025y / March / 30, 1743285600, 1743368400},
        {"CasablancaOf25Hours", "Africa/Casablanca", 2026y / February / 15, 1771110000, 1771200000},
        {"CasablancaOf23Hours", "Africa/Casablanca", 2026y / March / 22, 1774137600, 1774220400},
    };
}

inline LocalDay dayOf(const LocalDayRow& row)
{
    return {WallTime(std::chrono::seconds(row.start)), WallTime(std::chrono::seconds(row.end))};
}

/// A zone is its offsets and since when each holds, as the tz database has them for these years.
class TableDays final : public LocalDays {
public:
    std::optional<LocalDay> day(std::string_view zone,
                                std::chrono::year_month_day date) const override
    {
        const auto next = std::chrono::sys_days(date) + std::chrono::days(1);
        const auto start = midnight(zone, std::chrono::sys_days(date));
        const auto end = midnight(zone, next);
        if (!start || !end || *start == *end)
            return std::nullopt;
        return LocalDay{*start, *end};
    }

    std::optional<std::chrono::seconds> offset(std::string_view zone, WallTime at) const override
    {
        const auto found = m_zones.find(std::string(zone));
        if (found == m_zones.end())
            return std::nullopt;
        std::chrono::seconds offset = found->second.front().offset;
        for (const Since& since : found->second)
            offset = at >= since.at ? since.offset : offset;
        return offset;
    }

private:
    struct Since {
        WallTime at;
        std::chrono::seconds offset;
    };

    /// The first instant that is local midnight or later.
    std::optional<WallTime> midnight(std::string_view zone, WallTime local) const
    {
        const auto found = m_zones.find(std::string(zone));
        if (found == m_zones.end())
            return std::nullopt;
        for (const Since& since : found->second) {
            if (since.at + since.offset >= local && since.at > WallTime())
                return std::min(since.at, local - *offset(zone, since.at - Millis(1)));
        }
        return local - found->second.back().offset;
    }

    static WallTime utc(std::int64_t seconds) { return WallTime(std::chrono::seconds(seconds)); }

    const std::map<std::string, std::vector<Since>> m_zones{
        {"UTC", {{utc(0), std::chrono::seconds(0)}}},
        {"Europe/Amsterdam",
         {{utc(0), std::chrono::hours(1)},
          {utc(1774746000), std::chrono::hours(2)},
          {utc(1792890000), std::chrono::hours(1)}}},
        {"Australia/Lord_Howe",
         {{utc(0), std::chrono::hours(11)}, {utc(1743865200), std::chrono::minutes(630)}}},
        {"Africa/Cairo",
         {{utc(0), std::chrono::hours(2)}, {utc(1745532000), std::chrono::hours(3)}}},
        {"Pacific/Apia",
         {{utc(0), std::chrono::hours(-10)}, {utc(1325239200), std::chrono::hours(14)}}},
    };
};

}  // namespace bathside::test
