#include "core/alarms/rows.h"

namespace bathside {
namespace {

const Subject kStation{SubjectKind::Station, {}};

Course standing(const Bench& bench, StationCause cause, Level level, const Stamp& now)
{
    const Origin since = sinceOnRecord(bench, alarmId(cause, kStation), level, now);
    Course course{.cause = cause,
                  .subject = kStation,
                  .begins = {},
                  .limitAt = {},
                  .birdsLeft = {},
                  .certain = since.certain};
    course.begins[static_cast<std::size_t>(level)] = since.at;
    return course;
}

/// The probe does not answer at all; any other fault is one reading's own.
bool probeIsGone(const Bench& bench)
{
    if (!bench.shiftIsOpen() || !bench.lastTaken || !bench.lastTaken->fact.fault)
        return false;
    switch (*bench.lastTaken->fact.fault) {
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

std::optional<Level> soundLevel(const Bench& bench)
{
    if (bench.soundLost)
        return Level::Limit;
    return bench.shiftIsOpen() && !bench.soundProven ? std::optional(Level::HeadsUp) : std::nullopt;
}

}  // namespace

std::vector<Course> stationCourses(const Bench& bench, const Stamp& now)
{
    std::vector<Course> courses;
    const auto add = [&](StationCause cause, Level level) {
        courses.push_back(standing(bench, cause, level, now));
    };
    if (const auto level = soundLevel(bench))
        add(StationCause::NoSound, *level);
    if (bench.storeFailed)
        add(StationCause::NotRecorded, Level::Limit);
    if (bench.clockStepped)
        add(StationCause::ClockStepped, Level::HeadsUp);
    if (probeIsGone(bench))
        add(StationCause::ProbeLost, Level::HeadsUp);
    return courses;
}

}  // namespace bathside
