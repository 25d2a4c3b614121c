#pragma once

// The stores in words: what a lot is, how it stands, what a file's line lacks, what does not add
// up.

#include <QString>

#include "core/stores/intake.h"
#include "core/stores/reconcile.h"
#include "core/stores/warnings.h"

namespace bathside::ui {

[[nodiscard]] QString wordOf(StockKind kind);
[[nodiscard]] QString wordOf(DiscardReason why);
[[nodiscard]] QString wordOf(LotStanding standing);

/// "serotype 3, lot K07", "diluent 400 mL, lot D71", "needle"; without a lot: all of its sort.
[[nodiscard]] QString stockText(const Stock& of);
/// What a component, a diluent or a consumable is called: "serotype 3", "diluent 400 mL".
[[nodiscard]] QString itemText(const Stock& of);
[[nodiscard]] QString placeWords(const std::string& place);  // "no place named" where it is empty
[[nodiscard]] QString quarantineText(const std::string& why);
[[nodiscard]] QString isoDayText(std::chrono::sys_days day);  // 2026-03-05

/// A sentence.
[[nodiscard]] QString warningText(const StoreWarning& warning);
/// "Line 7, column expires: found “31.1.2027”, expected a day as YYYY-MM-DD."
[[nodiscard]] QString faultText(const IntakeFault& fault);

[[nodiscard]] QString wordOf(Outcome outcome);
[[nodiscard]] QString whatText(const Reckoning& row);  // "Ampoules out and accounted for"
/// A figure of that row in its unit.
[[nodiscard]] QString figureText(const Reckoning& row, std::int64_t figure);
/// Counted less expected, with its sign.
[[nodiscard]] QString differenceText(const Reckoning& row);

}  // namespace bathside::ui
