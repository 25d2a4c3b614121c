// bathside-paper: draws, on no screen.

#include "app/cli/program.h"

#include <QGuiApplication>

#include "app/paper/draw_sheet.h"

namespace bathside::cli {

std::unique_ptr<QCoreApplication> applicationOf(int& argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    return std::make_unique<QGuiApplication>(argc, argv);
}

SheetDrawing sheetDrawing() { return {.draw = drawSheet, .handOver = {}}; }

}  // namespace bathside::cli
