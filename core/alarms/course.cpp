#include "core/alarms/course.h"

#include <algorithm>
#include <utility>

namespace bathside {
namespace {

/// Wall time joins two boots only where the clock of both could be relied on.
bool wallJoins(const Bench& bench, const Stamp& from, const Stamp& now)
{
    return bench.clockTrusted && !bench.untrusted.contains(from.bootId) &&
           !bench.untrusted.contains(now.bootId);
}

}  // namespace

Origin originOf(const Bench& bench, const Stamp& from, const Stamp& now)
{
    if (from.bootId == now.bootId)
        return {.at = from.boot};
    if (!wallJoins(bench, from, now))
        return {.at = BootTime::zero(), .certain = false, .known = false};
    return {.at = onBootClock(from.wall, now), .certain = false};
}

BootTime onBootClock(WallTime at, const Stamp& now) { return now.boot + (at - now.wall); }

Origin laterOf(const Origin& a, const Origin& b) { return a.at < b.at ? b : a; }
Origin earlierOf(const Origin& a, const Origin& b) { return b.at < a.at ? b : a; }

Begins beginsFrom(const Origin& origin, const Thresholds<Millis>& thresholds)
{
    const BootTime zero = origin.known ? origin.at : -thresholds.at.value_or(Millis::zero());
    const auto begin = [zero](const std::optional<Millis>& threshold) {
        return threshold ? std::optional(zero + *threshold) : std::nullopt;
    };
    return {begin(thresholds.headsUp), begin(thresholds.at), begin(thresholds.overrun)};
}

std::optional<Level> AlarmCourse::level(BootTime now) const
{
    for (const Level level : {Level::Overrun, Level::Limit, Level::HeadsUp}) {
        const auto& begin = begins[indexOf(level)];
        if (begin && *begin <= now)
            return level;
    }
    return std::nullopt;
}

std::optional<BootTime> AlarmCourse::nextRise(BootTime now) const
{
    const auto reached = level(now);
    std::optional<BootTime> next;
    for (std::size_t i = reached ? indexOf(*reached) + 1 : 0; i < begins.size(); ++i) {
        if (begins[i])
            next = next ? std::min(*next, *begins[i]) : *begins[i];
    }
    return next;
}

AlarmCourse timedCourse(AlarmCause cause, Subject subject, const Origin& from,
                        const Thresholds<Millis>& thresholds)
{
    const Begins begins = beginsFrom(from, thresholds);
    return {.cause = cause,
            .subject = std::move(subject),
            .begins = begins,
            .limitAt = begins[indexOf(Level::Limit)],
            .birdsLeft = {},
            .certain = from.certain};
}

AlarmCourse judgedCourse(AlarmCause cause, Subject subject, Level level, const Origin& since,
                         const std::optional<Millis>& overrun)
{
    Begins begins;
    begins[indexOf(level)] = since.at;
    if (level == Level::Limit && overrun)
        begins[indexOf(Level::Overrun)] = since.at + *overrun;
    return {.cause = cause,
            .subject = std::move(subject),
            .begins = begins,
            .limitAt = {},
            .birdsLeft = {},
            .certain = since.certain};
}

}  // namespace bathside
