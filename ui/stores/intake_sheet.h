#pragma once

// A delivery's file as a sheet to read: what is wrong first, then what was received before, then
// what can be taken.

#include "core/stores/intake.h"
#include "core/stores/warnings.h"
#include "ui/record/record_text.h"

namespace bathside::ui {

/// Before it is taken; afterwards the title says that it was.
enum class IntakeStage : std::uint8_t { Offered, Taken };

[[nodiscard]] Sheet sheetOf(const Intake& intake, IntakeStage stage);

/// All warnings, the gravest first.
[[nodiscard]] Sheet sheetOf(const std::vector<StoreWarning>& warnings);

}  // namespace bathside::ui
