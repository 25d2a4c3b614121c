#pragma once

// A thermometer in words: how it stands, what it showed last, its calibration, its connection.

#include <QString>
#include <QStringList>

#include "core/bath/probe.h"
#include "core/bench/bench.h"
#include "ui/theme/role.h"

namespace bathside::ui {

struct ProbeStanding {
    Role role = Role::Neutral;
    QString word{};     // "inside", "no reading", "out of use"
    QString reading{};  // "28.1 ± 0.2 °C", or the fault as a sentence
};

/// `last`: what it said last (`StationModel::newest`).
[[nodiscard]] ProbeStanding standingOf(const Bench& bench, const Probe& probe,
                                       const std::optional<TakenReading>& last, const Stamp& now);
/// What keeps its last reading from being decided, and how likely it is within tolerance where that
/// is not decided.
[[nodiscard]] QStringList doubtsOf(const Bench& bench, const Probe& probe,
                                   const std::optional<TakenReading>& last,
                                   std::chrono::sys_days today);
/// Its name, else its id.
[[nodiscard]] QString nameText(const Probe& probe);
/// "due 3 May 2026", "overdue since …", "not calibrated".
[[nodiscard]] QString dueText(const Probe& probe, std::chrono::sys_days today);
[[nodiscard]] Role roleOfDue(const Probe& probe, std::chrono::sys_days today);
/// Certificate and points, in one sentence.
[[nodiscard]] QString calibrationText(const Probe& probe);
[[nodiscard]] QString pointText(const CalibrationPoint& point);
/// Where it is connected: "one-wire 28-0000075f2b1c", "/dev/ttyUSB0, 9600 baud, # C".
[[nodiscard]] QString connectionText(const ProbeSource& source);
/// A port's own name, with blanks where it may break.
[[nodiscard]] QString portText(const std::string& path);
[[nodiscard]] QString unitText(LineUnit unit);
/// °C with as few decimals as it takes, three at most.
[[nodiscard]] QString celsiusText(double celsius);
[[nodiscard]] QString shortDayText(std::chrono::sys_days day);

}  // namespace bathside::ui
