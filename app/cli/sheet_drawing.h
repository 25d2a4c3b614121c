#pragma once

// How a day sheet becomes a PDF: the program at hand draws it, or hands the whole call to one that
// can.

#include <functional>
#include <string>

#include "app/cli/verb.h"
#include "core/record/day_sheet.h"

namespace bathside::cli {

struct SheetWish {
    std::string paper;     // "a4", "letter"
    std::string language;  // "en", "es"
};

struct SheetDrawing {
    std::function<Result<std::string, Unusable>(const DaySheet&, const SheetWish&)> draw;
    std::function<Exit(Terminal&)> handOver;  // the same call, done elsewhere
};

}  // namespace bathside::cli
