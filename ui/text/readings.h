#pragma once

// A reading of the bath in words: what it is worth showing, and whether it still is one.

#include <QString>

#include "core/bench/bench.h"

namespace bathside::ui {

/// "28.1 ± 0.2 °C" of one that is no fault. Without ± where its thermometer is not calibrated: how
/// finely it reads is not how far it may be off.
[[nodiscard]] QString readingText(const Bench& bench, const ReadingTaken& reading);

/// It has points of a certificate, due or not.
[[nodiscard]] bool isCalibrated(const Bench& bench, const ProbeId& id);
/// By the card in force it is no reading of the bath any more.
[[nodiscard]] bool isTooOld(const Bench& bench, const TakenReading& reading, const Stamp& now);

}  // namespace bathside::ui
