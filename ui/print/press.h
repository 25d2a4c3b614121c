#pragma once

// Pages to a printer, or into a PDF file.
//
// What does not fit its paper is not printed. A file appears whole or not at all.

#include <QString>

#include "core/base/result.h"
#include "ui/print/fault.h"
#include "ui/print/paper.h"

class QPrinter;

namespace bathside::ui {

/// `pages` are one or more. Sets the printer's paper; blocks until the job is handed over.
[[nodiscard]] Result<void, PrintFault> print(const PaperPages& pages, QPrinter& printer);
[[nodiscard]] Result<void, PrintFault> savePdf(const PaperPages& pages, const QString& path);

}  // namespace bathside::ui
