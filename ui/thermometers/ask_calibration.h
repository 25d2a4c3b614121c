#pragma once

// Asks for a thermometer's calibration as its certificate has it, one value at a time. Nothing is
// said before *saved* is tapped; what was typed is kept until then.

#include "ui/thermometers/thermo_context.h"

namespace bathside::ui {

void askCalibration(ThermoContext& context, const ProbeId& probe);

}  // namespace bathside::ui
