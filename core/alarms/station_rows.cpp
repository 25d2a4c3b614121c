#include <algorithm>
#include <utility>

#include "core/alarms/rows.h"

namespace bathside {
namespace {

const Subject kStation{SubjectKind::Station, {}};

// Readings of a dipstick closer together differ by the hand that read them; ours.
constexpr auto kTelling = std::chrono::hours(12);

// A reading or two that fail are mended by the next; ours.
constexpr auto kLasting = std::chrono::seconds(15);

AlarmCourse standing(const Bench& bench, StationCause cause, const Subject& subject, Level level,
                     const Stamp& now)
{
    const Origin since = sinceOnRecord(bench, alarmId(cause, subject), level, now);
    AlarmCourse course{.cause = cause,
                       .subject = subject,
                       .begins = {},
                       .limitAt = {},
                       .birdsLeft = {},
                       .certain = since.certain};
    course.begins[static_cast<std::size_t>(level)] = since.at;
    return course;
}

/// The probe does not answer at all; any other fault is one reading's own, until it lasts.
bool isGone(ReadingFault fault)
{
    switch (fault) {
        case ReadingFault::Lost:
        case ReadingFault::OpenLine:
        case ReadingFault::Empty:
            return true;
        case ReadingFault::CheckFailed:
        case ReadingFault::PowerOn:
        case ReadingFault::Shorted:
        case ReadingFault::Unreadable:
        case ReadingFault::Implausible:
        case ReadingFault::Jump:
            return false;
    }
    return false;
}

/// Once told it stands until there is a good reading, whatever faults come between.
std::optional<AlarmCourse> probeLost(const Bench& bench, const Stamp& now)
{
    const auto fault = bench.shiftIsOpen() ? bench.readingFault() : std::nullopt;
    if (!fault)
        return std::nullopt;
    AlarmCourse course = standing(bench, StationCause::ProbeLost, kStation, Level::HeadsUp, now);
    const bool isTold = bench.alarms.contains(alarmId(course.cause, course.subject));
    if (isGone(*fault) || isTold || !bench.faultySince)
        return course;
    const Origin since = originOf(bench, *bench.faultySince, now);
    course.begins[indexOf(Level::HeadsUp)] = since.at + kLasting;
    course.certain = since.certain;
    return course;
}

/// From the last fill, or the first reading, to the last one.
Millis sinceFill(const VesselLog& log)
{
    const auto fill = std::ranges::find_if(log.dips.rbegin(), log.dips.rend(), &Dip::filled);
    const Dip& first = fill == log.dips.rend() ? log.dips.front() : *fill;
    return log.dips.back().at - first.at;
}

/// Whether a loss by these readings is the vessel's.
bool tells(const VesselLog& log, const VesselAnswer& answer)
{
    return answer.evaporation && (answer.evaporation->interval || sinceFill(log) >= kTelling);
}

/// A vacuum that fails loses more than the vessel usually does.
std::optional<Level> vacuumLevel(const VesselLog& log, const VesselAnswer& answer)
{
    if (answer.vacuum.value_or(Vacuum::Sound) == Vacuum::Sound)
        return std::nullopt;
    if (*answer.vacuum == Vacuum::Failing)
        return Level::Limit;
    return tells(log, answer) ? std::optional(Level::HeadsUp) : std::nullopt;
}

/// Below its minimum as the dipstick showed, else from when its loss has brought it there.
std::optional<AlarmCourse> levelCourse(const Bench& bench, const Subject& vessel,
                                       const VesselLog& log, const VesselAnswer& answer,
                                       const Stamp& now)
{
    if (answer.isBelowMinimum)
        return standing(bench, StationCause::VesselLow, vessel, Level::Limit, now);
    if (!answer.refill || !tells(log, answer))
        return std::nullopt;
    const auto due = dateAfter(answer.last, answer.refill->days);
    if (!due)
        return std::nullopt;
    return judgedCourse(StationCause::VesselLow, vessel, Level::HeadsUp,
                        {.at = onBootClock(*due, now)}, std::nullopt);
}

std::optional<Level> soundLevel(const Bench& bench)
{
    if (bench.soundLost)
        return Level::Limit;
    return bench.shiftIsOpen() && !bench.soundProven ? std::optional(Level::HeadsUp) : std::nullopt;
}

}  // namespace

std::vector<AlarmCourse> stationCourses(const Bench& bench, const Stamp& now)
{
    std::vector<AlarmCourse> courses;
    const auto add = [&](StationCause cause, Level level) {
        courses.push_back(standing(bench, cause, kStation, level, now));
    };
    if (const auto level = soundLevel(bench))
        add(StationCause::NoSound, *level);
    if (bench.storeFailed)
        add(StationCause::NotRecorded, Level::Limit);
    if (bench.clockStepped)
        add(StationCause::ClockStepped, Level::HeadsUp);
    if (auto row = probeLost(bench, now))
        courses.push_back(*std::move(row));
    for (const auto& [id, log] : bench.vessels) {
        const auto answer = log.answer();
        if (!answer)
            continue;
        const Subject vessel{SubjectKind::Station, id.text};
        if (const auto level = vacuumLevel(log, *answer))
            courses.push_back(standing(bench, StationCause::Vessel, vessel, *level, now));
        if (auto low = levelCourse(bench, vessel, log, *answer, now))
            courses.push_back(std::move(*low));
    }
    return courses;
}

}  // namespace bathside
