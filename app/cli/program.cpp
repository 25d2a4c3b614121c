// bathside-cli: without Qt Gui.

#include "app/cli/program.h"

#include <string>
#include <vector>

#include "app/system/other_program.h"

namespace bathside::cli {
namespace {

/// Comes back only where that program is not there.
Exit becomePaper(Terminal& terminal)
{
    const std::string program =
        (QCoreApplication::applicationDirPath() + QStringLiteral("/bathside-paper")).toStdString();
    std::vector<std::string> words;
    for (const QString& word : QCoreApplication::arguments())
        words.push_back(word.toStdString());
    bathside::app::becomeProgram(program, std::move(words));
    return refuse(terminal, {"--as", "", "pdf", "the program " + program});
}

}  // namespace

std::unique_ptr<QCoreApplication> applicationOf(int& argc, char** argv)
{
    return std::make_unique<QCoreApplication>(argc, argv);
}

SheetDrawing sheetDrawing() { return {.draw = {}, .handOver = becomePaper}; }

}  // namespace bathside::cli
