#pragma once

// Pages to a printer, or into a PDF file.
//
// What does not fit its paper is not printed. A file appears whole or not at all. Pages whose
// letters are set may go on their way on any thread.

#include <QString>
#include <string>

#include "core/base/result.h"
#include "ui/print/fault.h"
#include "ui/print/paper.h"

class QPrinter;

namespace bathside::ui {

/// Every page is whole on its paper. `pages` are one or more, here and below.
[[nodiscard]] Result<SetPages, PrintFault> setPages(const PaperPages& pages);

/// Sets the printer's paper; blocks until the job is handed over.
[[nodiscard]] Result<void, PrintFault> print(const SetPages& pages, QPrinter& printer);
[[nodiscard]] Result<void, PrintFault> savePdf(const SetPages& pages, const QString& path);
/// The file's bytes, for whoever keeps files of his own.
[[nodiscard]] Result<std::string, PrintFault> pdfOf(const SetPages& pages);

[[nodiscard]] Result<void, PrintFault> print(const PaperPages& pages, QPrinter& printer);
[[nodiscard]] Result<void, PrintFault> savePdf(const PaperPages& pages, const QString& path);

}  // namespace bathside::ui
