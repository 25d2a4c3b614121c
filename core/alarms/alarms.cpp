#include "core/alarms/alarms.h"

#include <algorithm>
#include <iterator>
#include <tuple>

#include "core/alarms/rows.h"

namespace bathside {
namespace {

void note(std::optional<BootTime>& nextChange, const std::optional<BootTime>& at)
{
    if (at && (!nextChange || *at < *nextChange))
        nextChange = at;
}

Alarm made(const AlarmCourse& course, Level level, BootTime now)
{
    Alarm alarm{.id = alarmId(course.cause, course.subject),
                .cause = course.cause,
                .subject = course.subject,
                .level = level,
                .since = *course.begins[static_cast<std::size_t>(level)],
                .left = {},
                .birdsLeft = course.birdsLeft,
                .certain = course.certain};
    if (course.limitAt)
        alarm.left = *course.limitAt - now;
    return alarm;
}

/// The card's time, by where the bench stood when it was heard: so a hush, once granted, has one
/// end.
Millis hushTime(const Bench& bench, const Stamp& heard)
{
    const Card::Content& card = bench.card->content();
    return inCriticalWindow(bench, heard) ? card.hushInWindow : card.hushOutside;
}

/// When the hush of this alarm ends; none where it was not heard at this level.
std::optional<BootTime> hushEnd(const Bench& bench, const Alarm& alarm, const Stamp& now)
{
    const auto raised = bench.alarms.find(alarm.id);
    if (!bench.card || raised == bench.alarms.end() || !raised->second.heard)
        return std::nullopt;
    const Origin heard = originOf(bench, *raised->second.heard, now);
    if (!heard.known || raised->second.level < alarm.level || heard.at < alarm.since)
        return std::nullopt;
    return heard.at + hushTime(bench, *raised->second.heard);
}

void hush(const Bench& bench, Alarm& alarm, const Stamp& now, std::optional<BootTime>& nextChange)
{
    const auto end = hushEnd(bench, alarm, now);
    alarm.hushed = end && now.boot < *end;
    if (alarm.hushed)
        note(nextChange, end);
}

bool worseOrOlder(const Alarm& a, const Alarm& b)
{
    return std::tuple(b.level, a.since) < std::tuple(a.level, b.since);
}

}  // namespace

Alarms alarms(const Bench& bench, const Stamp& now)
{
    std::vector<AlarmCourse> courses = workCourses(bench, now);
    std::ranges::move(bathCourses(bench, now), std::back_inserter(courses));
    std::ranges::move(stationCourses(bench, now), std::back_inserter(courses));

    Alarms result;
    for (const AlarmCourse& course : courses) {
        note(result.nextChange, course.nextRise(now.boot));
        const auto level = course.level(now.boot);
        if (!level)
            continue;
        result.due.push_back(made(course, *level, now.boot));
        hush(bench, result.due.back(), now, result.nextChange);
    }
    std::ranges::stable_sort(result.due, worseOrOlder);
    return result;
}

std::optional<Countdown> countdown(const Bench& bench, const Ampoule& ampoule, const Stamp& now)
{
    const auto running = runningLimit(bench, ampoule);
    if (!running || !running->thresholds.at)
        return std::nullopt;
    const Origin from = originOf(bench, running->from, now);
    const BootTime limitAt =
        *beginsFrom(from, running->thresholds)[static_cast<std::size_t>(Level::Limit)];
    const Micros left = limitAt - now.boot;
    return Countdown{.limit = running->limit,
                     .thresholds = running->thresholds,
                     .run = *running->thresholds.at - left,
                     .left = left,
                     .certain = from.certain};
}

}  // namespace bathside
