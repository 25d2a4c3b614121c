#pragma once

// The rows of the card and the station's own causes, as they run now: one course for each cause and
// subject that can fall due without a further fact. Pure.
//
// Each is ended by the fact that takes it out of here, never by time. (Spec: the job, section 3;
// alarms.)

#include <optional>
#include <string>
#include <vector>

#include "core/alarms/course.h"

namespace bathside {

/// "thaw ampoule:3/2": the same for all levels.
[[nodiscard]] std::string alarmId(const AlarmCause& cause, const Subject& subject);

/// What runs for an ampoule: exposure until it is in the bath, then thaw until it is in diluent.
struct RunningLimit {
    LimitName limit{};
    Stamp from;
    Thresholds<Millis> thresholds;  // its component's own; the heads-up brought forward by pace
};
[[nodiscard]] std::optional<RunningLimit> runningLimit(const Bench& bench, const Ampoule& ampoule);

/// Ampoules, bags, lines and the planned pull.
[[nodiscard]] std::vector<AlarmCourse> workCourses(const Bench& bench, const Stamp& now);
/// The water of a pull, that before the next one, and the age of what is known of it.
[[nodiscard]] std::vector<AlarmCourse> bathCourses(const Bench& bench, const Stamp& now);
[[nodiscard]] std::vector<AlarmCourse> stationCourses(const Bench& bench, const Stamp& now);

/// When a level began that no fact of the bench dates: as the record has it, else with the last
/// event.
[[nodiscard]] Origin sinceOnRecord(const Bench& bench, const std::string& alarm, Level level,
                                   const Stamp& now);

}  // namespace bathside
