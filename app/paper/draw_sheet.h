#pragma once

// A day sheet as PDF, without a screen. Needs a QGuiApplication.

#include "app/cli/sheet_drawing.h"

namespace bathside::cli {

[[nodiscard]] Result<std::string, Unusable> drawSheet(const DaySheet& sheet, const SheetWish& wish);

}  // namespace bathside::cli
