#include "app/station/printers.h"

#include <QPrinter>
#include <QPrinterInfo>

#include "ui/print/press.h"

namespace bathside::app {
namespace {

// A QPrinter of a name that is not there would quietly write a file.
Result<void, ui::PrintFault> send(const ui::SetPages& pages, const QString& name)
{
    const QPrinterInfo known = QPrinterInfo::printerInfo(name);
    if (known.isNull() || known.state() == QPrinter::Error)
        return failure(ui::PrintFault::PrinterRefused);
    QPrinter printer(known, QPrinter::HighResolution);
    if (!printer.isValid() || printer.printerName() != name)
        return failure(ui::PrintFault::PrinterRefused);
    return ui::print(pages, printer);
}

}  // namespace

Printers installedPrinters() { return {QPrinterInfo::availablePrinterNames, send}; }

}  // namespace bathside::app
