#pragma once

// Asks how a serial thermometer talks: speed, what its number means, where it stands in the line.

#include "ui/thermometers/thermo_context.h"

namespace bathside::ui {

using SerialAnswered = std::function<void(const SerialLine& line, const AnswerTap& tap)>;

/// Its id is "back".
[[nodiscard]] Choice leaveIt();
void askSpeed(ThermoContext& context, const SerialLine& line, SerialAnswered answered);
/// A thermistor's coefficients one by one, and whether the resistance they come to is the sensor's.
void askUnit(ThermoContext& context, const SerialLine& line, SerialAnswered answered);
/// By the number each pattern reads: in the line that has come last, else in an example.
void askPattern(ThermoContext& context, const ProbeId& probe, const SerialLine& line,
                SerialAnswered answered);

}  // namespace bathside::ui
