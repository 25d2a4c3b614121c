#pragma once

// The day sheet laid out: the record of a day as it is put before an inspector.
//
// First what and whose it is, with the head of the record as text and as a code (core/scan/
// own_code.h); then each shift; then signatures, seals and cautions. What is over a limit says so
// in words. In the language of the screen; black on white.

#include "core/record/day_sheet.h"
#include "ui/print/paper.h"

namespace bathside::ui {

/// As many pages as it takes; all of it fits. `paper` is a sheet; `language` of the card's words.
[[nodiscard]] PaperPages pagesOf(const DaySheet& sheet, Paper paper, const std::string& language);

/// What the sheet's code says; none for an empty trail.
[[nodiscard]] std::optional<std::string> codeOf(const DaySheet& sheet);

}  // namespace bathside::ui
