#pragma once

// Asks where a thermometer is connected: what is plugged in and nobody described, a port by its
// path, or nowhere, for one that is read by hand. A port that another reads is shown with whose it
// is, and not taken.

#include "ui/thermometers/thermo_context.h"

namespace bathside::ui {

using Connected = std::function<void(const ProbeSource& source, const AnswerTap& tap)>;

/// A serial line with its speed; its pattern takes the whole line until one is chosen.
void askConnection(ThermoContext& context, const QString& title, Connected answered);

}  // namespace bathside::ui
