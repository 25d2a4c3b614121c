#pragma once

// Asks for a new thermometer, and for what is to be different about a known one. Each answer is
// said at once; old values stay until then.

#include "ui/thermometers/thermo_context.h"

namespace bathside::ui {

/// What is plugged in and nobody described, or one that is read by hand; then name and smallest
/// step.
void askNewThermometer(ThermoContext& context);
/// Name, smallest step, drift, connection, in use or not; a serial line's speed, pattern, unit.
void askChange(ThermoContext& context, const ProbeId& probe);

}  // namespace bathside::ui
