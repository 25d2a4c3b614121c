#pragma once

// Why something was not printed. Words: ui/text/faults.h.

#include <cstdint>

namespace bathside::ui {

enum class PrintFault : std::uint8_t {
    DoesNotFit,      // more text than the paper takes
    PrinterRefused,  // it is gone, or takes no such paper
    CannotWrite,     // the file
};

}  // namespace bathside::ui
