#pragma once

// What was scanned, and why it was not taken, in words.

#include <QString>

#include "core/bench/decide.h"

namespace bathside::ui {

/// What a refusal of a scan is called, short and in capitals: "WRONG LOT".
[[nodiscard]] QString scanRefusalWord(RefusalCode code);
/// "Scanned: lot K51, good to 2027-06-30"; the text itself where it names no lot. Never long.
[[nodiscard]] QString scannedText(const QString& text, std::chrono::year now);
/// "Expected: serotype 3 lot K50, serotype 1 lot R50"; empty: no lot is known.
[[nodiscard]] QString expectedLotsText(const Bench& bench);

}  // namespace bathside::ui
