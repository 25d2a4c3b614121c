#pragma once

// Prints and saves in the background, one after the other: the station's way to paper.
//
// Labels that no printer takes go to "labels" in the data folder, sheets to our folder in this
// computer's documents, beside the exports; no file replaces another. Ending waits for what is in
// hand. UI thread.

#include <QThreadPool>

#include "app/station/printers.h"
#include "ui/models/preferences.h"
#include "ui/models/printing.h"
#include "ui/print/paper.h"

namespace bathside::app {

class PaperDesk final : public ui::Printing {
    Q_OBJECT

public:
    /// `preferences` outlives this.
    explicit PaperDesk(const ui::Preferences& preferences, Printers printers = installedPrinters());
    ~PaperDesk() override;

    [[nodiscard]] QStringList printers() const override { return m_printers.names(); }
    void printLabel(const ui::BagLabel& label) override;
    void printTestLabel(const ui::BagLabel& label) override;
    void printSheet(const ui::PlanSheet& sheet) override;
    void printDay(const DaySheet& sheet) override;

private:
    struct Job;

    void printLabel(const ui::BagLabel& label, ui::PrintOutcome::Of of, const QString& name);
    void start(Job job);
    [[nodiscard]] ui::PrintOutcome done(const Job& job) const;

    const ui::Preferences& m_preferences;
    const Printers m_printers;
    QThreadPool m_worker;
};

}  // namespace bathside::app
