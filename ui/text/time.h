#pragma once

// Durations and local times as people read them.
//
// A countdown never says less than is left: 0.3 s left is "0:01"; past the limit it counts up, and
// says never more than has passed: 0.3 s over is "+0:00". Local time by the zone of the shift (tz
// database).

#include <QString>
#include <string>

#include "core/base/time.h"

namespace bathside::ui {

/// "1:07", "1:02:03"; below zero "+0:12".
[[nodiscard]] QString countdownText(Micros left);
/// Whole minutes, rounded down: "41 min"; under one minute in seconds: "45 s".
[[nodiscard]] QString ageText(Micros age);
/// "41 min left", "45 s left"; below zero "2 min over".
[[nodiscard]] QString leftText(Micros left);
/// For what lasted: "9.8 s", "1 min 31.2 s".
[[nodiscard]] QString durationText(Millis time);

/// "09:41:07" in that zone; UTC where the zone is not known.
[[nodiscard]] QString localTimeText(WallTime at, const std::string& zone);
/// The calendar day there; UTC's where the zone is not known.
[[nodiscard]] std::chrono::sys_days localDay(WallTime at, const std::string& zone);
/// "09:41": the minute that has begun, so that nothing is put off by it.
[[nodiscard]] QString localMinuteText(WallTime at, const std::string& zone);
/// "Thu 5 March 2026" in the language of the screen.
[[nodiscard]] QString dayText(std::chrono::year_month_day day);
/// "09:41", "24:10": since the day's midnight, the minute that has begun.
[[nodiscard]] QString dayMinuteText(Millis sinceMidnight);
/// "2026-03-14 09:41:07 +01:00"
[[nodiscard]] QString localDateTimeText(WallTime at, const std::string& zone);

}  // namespace bathside::ui
