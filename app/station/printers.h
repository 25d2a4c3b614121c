#pragma once

// The printers that are installed in this system, through Qt.

#include <QStringList>
#include <functional>

#include "core/base/result.h"
#include "ui/print/fault.h"
#include "ui/print/paper.h"

namespace bathside::app {

struct Printers {
    std::function<QStringList()> names;
    /// Blocks until the job is handed over. On any one thread.
    std::function<Result<void, ui::PrintFault>(const ui::SetPages&, const QString& printer)> send;
};

/// What the system says; one that is gone or stopped refuses.
[[nodiscard]] Printers installedPrinters();

}  // namespace bathside::app
