#pragma once

// The way to paper: the port to the printers, and to the folders of PDFs beside them.
//
// What is printed is laid out at once for the printer and paper that are set; the rest goes its own
// way and nobody waits for it. What no printer takes is saved as a PDF, so nothing is lost. `ended`
// tells how it went, once for each. Printing is no fact: the trail knows nothing of it. UI thread.

#include <QObject>
#include <QStringList>
#include <optional>

#include "core/record/day_sheet.h"
#include "ui/print/bag_label.h"
#include "ui/print/fault.h"
#include "ui/print/plan_sheet.h"

namespace bathside::ui {

/// On paper: a printer and no fault. Saved: a file, and a fault where a printer was to take it.
struct PrintOutcome {
    enum class Of : std::uint8_t { Label, TestLabel, Sheet, DaySheet };

    Of of{};
    QString printer;  // that was asked; empty: none is set
    QString file;     // empty: none was written
    std::optional<PrintFault> fault;

    [[nodiscard]] bool isLost() const { return fault && file.isEmpty(); }
};

class Printing : public QObject {
    Q_OBJECT

public:
    /// The system's names of those that are installed. May take a moment: not in the window.
    [[nodiscard]] virtual QStringList printers() const = 0;

    virtual void printLabel(const BagLabel& label) = 0;
    /// The same, of no bag that there is.
    virtual void printTestLabel(const BagLabel& label) = 0;
    virtual void printSheet(const PlanSheet& sheet) = 0;
    virtual void printDay(const DaySheet& sheet) = 0;

signals:
    void ended(const bathside::ui::PrintOutcome& outcome);
};

}  // namespace bathside::ui
