#pragma once

// The plan's sheet as a PDF in this computer's documents, beside the exports:
// "plan-2026-03-05.pdf", with a number where that name is taken.

#include "core/base/result.h"
#include "ui/print/fault.h"
#include "ui/print/plan_sheet.h"

namespace bathside::app {

/// The file's path.
[[nodiscard]] Result<QString, ui::PrintFault> savePlanSheet(const ui::PlanSheet& sheet);

}  // namespace bathside::app
