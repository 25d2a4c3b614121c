#pragma once

// What bathside-cli and bathside-paper do each in its own way; all else they share. The first
// knows no letters and no Qt Gui, and hands what is to be drawn to the second.

#include <QCoreApplication>
#include <memory>

#include "app/cli/sheet_drawing.h"

namespace bathside::cli {

[[nodiscard]] std::unique_ptr<QCoreApplication> applicationOf(int& argc, char** argv);
[[nodiscard]] SheetDrawing sheetDrawing();

}  // namespace bathside::cli
