#include "core/trail/store/zone_days.h"

#include <QDateTime>
#include <QTimeZone>

namespace bathside::store {
namespace {

using namespace std::chrono;

// Qt takes no name for the zone of the machine.
std::optional<QTimeZone> zoneOf(std::string_view name)
{
    if (name.empty())
        return std::nullopt;
    const QTimeZone zone(QByteArray(name.data(), static_cast<qsizetype>(name.size())));
    return zone.isValid() ? std::optional(zone) : std::nullopt;
}

milliseconds offsetAt(const QTimeZone& zone, WallTime at)
{
    const auto utc =
        QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(), QTimeZone::utc());
    return seconds(zone.offsetFromUtc(utc));
}

sys_days dateAt(const QTimeZone& zone, WallTime at) { return floor<days>(at + offsetAt(zone, at)); }

/// The first instant whose local date is `date` or later. Local dates never go back by a day.
WallTime firstInstantFrom(const QTimeZone& zone, sys_days date)
{
    WallTime before = date - hours(36);  // no zone is farther from UTC
    WallTime from = date + hours(36);
    while (from - before > milliseconds(1)) {
        const WallTime middle = before + (from - before) / 2;
        (dateAt(zone, middle) < date ? before : from) = middle;
    }
    return from;
}

}  // namespace

std::optional<LocalDay> ZoneDays::day(std::string_view name, year_month_day date) const
{
    const auto zone = zoneOf(name);
    if (!zone || !date.ok())
        return std::nullopt;
    const LocalDay day{firstInstantFrom(*zone, sys_days(date)),
                       firstInstantFrom(*zone, sys_days(date) + days(1))};
    return day.start < day.end ? std::optional(day) : std::nullopt;
}

std::optional<seconds> ZoneDays::offset(std::string_view name, WallTime at) const
{
    const auto zone = zoneOf(name);
    return zone ? std::optional(duration_cast<seconds>(offsetAt(*zone, at))) : std::nullopt;
}

}  // namespace bathside::store
