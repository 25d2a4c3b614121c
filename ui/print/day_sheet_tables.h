#pragma once

// The tables of a day sheet, in words: what is over a limit says so with a sign and a word.

#include "core/record/day_sheet.h"
#include "ui/print/sheet_writer.h"

namespace bathside::ui {

[[nodiscard]] SheetTable linesTable(const SheetShift& shift);
/// `language`: of the card's own words.
[[nodiscard]] SheetTable checksTable(const SheetShift& shift, const std::string& language);
[[nodiscard]] SheetTable bagsTable(const SheetShift& shift);
/// Every hold of those bags, and how it ended.
[[nodiscard]] SheetTable holdsTable(const SheetShift& shift);
[[nodiscard]] SheetTable ampoulesTable(const SheetShift& shift);
[[nodiscard]] SheetTable bathsTable(const SheetShift& shift);
[[nodiscard]] SheetTable deviationsTable(const SheetShift& shift, const People& people,
                                         const std::string& language);
[[nodiscard]] SheetTable sumsTable(const SheetShift& shift);
[[nodiscard]] SheetTable notesTable(const SheetShift& shift);
[[nodiscard]] SheetTable carriedTable(const SheetShift& shift, const People& people,
                                      const std::string& language);
[[nodiscard]] SheetTable signaturesTable(const DaySheet& sheet);

/// Each ampoule's two times, and each bag's age, as shares of their limits.
[[nodiscard]] SheetColumns ampouleColumns(const SheetShift& shift);
[[nodiscard]] SheetColumns bagColumns(const SheetShift& shift);

/// "T1 Glass thermometer, certificate C-118, calibrated 2025-11-03, due 2026-11-03."
[[nodiscard]] QString probeText(const Probe& probe);
/// A deviation that a correction has shown to be none.
[[nodiscard]] QString keptText(const Deviation& deviation);

}  // namespace bathside::ui
