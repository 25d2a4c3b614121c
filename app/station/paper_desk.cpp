#include "app/station/paper_desk.h"

#include <QDir>

#include "app/station/record_places.h"
#include "app/system/paths.h"
#include "core/base/day.h"
#include "ui/print/bag_label_pages.h"
#include "ui/print/day_sheet_pages.h"
#include "ui/print/press.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::app {
namespace {

constexpr auto kLabels = "labels";

QString labelFolder()
{
    return QString::fromStdString((folderFor(Keeps::Data) / kLabels).string());
}

QString dayText(std::chrono::sys_days day) { return ui::fromCore(toText(day)); }

/// A bag's name may hold anything; a file's may not.
QString forFile(const QString& name)
{
    QString safe = name;
    for (QChar& c : safe) {
        if (!c.isLetterOrNumber() && c != u'-' && c != u'.')
            c = u'_';
    }
    return safe;
}

/// Where the set paper is too small, the roll gives way in length.
Result<ui::SetPages, ui::PrintFault> labelForFile(const ui::BagLabel& label, ui::Paper paper)
{
    const auto pages = ui::setPages(ui::pagesOf(label, paper));
    return pages ? pages : ui::setPages(ui::pagesOf(label, ui::Paper::Roll));
}

}  // namespace

struct PaperDesk::Job {
    ui::PrintOutcome outcome;
    Result<ui::SetPages, ui::PrintFault> forPrinter, forFile;
    QString folder, name;
};

PaperDesk::PaperDesk(const ui::Preferences& preferences, Printers printers)
    : m_preferences(preferences), m_printers(std::move(printers))
{
    m_worker.setMaxThreadCount(1);
}

PaperDesk::~PaperDesk() { m_worker.waitForDone(); }

void PaperDesk::printLabel(const ui::BagLabel& label)
{
    const QString day = dayText(ui::localDay(label.mixed, label.zone));
    printLabel(label, ui::PrintOutcome::Of::Label, day + u'-' + forFile(ui::idText(label.bag)));
}

void PaperDesk::printTestLabel(const ui::BagLabel& label)
{
    printLabel(label, ui::PrintOutcome::Of::TestLabel, QStringLiteral("test"));
}

void PaperDesk::printLabel(const ui::BagLabel& label, ui::PrintOutcome::Of of, const QString& name)
{
    const ui::PrintChoice& set = m_preferences.now().print;
    start({.outcome = {of, set.labelPrinter, {}, {}},
           .forPrinter = ui::setPages(ui::pagesOf(label, set.labelPaper)),
           .forFile = labelForFile(label, set.labelPaper),
           .folder = labelFolder(),
           .name = name});
}

void PaperDesk::printSheet(const ui::PlanSheet& sheet)
{
    const ui::PrintChoice& set = m_preferences.now().print;
    const auto pages = ui::setPages(ui::pagesOf(sheet, set.sheetPaper));
    start({.outcome = {ui::PrintOutcome::Of::Sheet, set.sheetPrinter, {}, {}},
           .forPrinter = pages,
           .forFile = pages,
           .folder = recordPlaces().front().folder,
           .name = QStringLiteral("plan-") + dayText(sheet.day)});
}

void PaperDesk::printDay(const DaySheet& sheet)
{
    const ui::PrintChoice& set = m_preferences.now().print;
    const std::string language = m_preferences.now().language.toStdString();
    const auto pages = ui::setPages(ui::pagesOf(sheet, set.sheetPaper, language));
    start({.outcome = {ui::PrintOutcome::Of::DaySheet, set.sheetPrinter, {}, {}},
           .forPrinter = pages,
           .forFile = pages,
           .folder = recordPlaces().front().folder,
           .name = QStringLiteral("day-sheet-") + dayText(sheet.first)});
}

void PaperDesk::start(Job job)
{
    m_worker.start([this, job = std::move(job)] {
        const ui::PrintOutcome outcome = done(job);
        QMetaObject::invokeMethod(
            this, [this, outcome] { emit ended(outcome); }, Qt::QueuedConnection);
    });
}

/// On the worker.
ui::PrintOutcome PaperDesk::done(const Job& job) const
{
    ui::PrintOutcome outcome = job.outcome;
    if (!outcome.printer.isEmpty()) {
        const auto sent = job.forPrinter ? m_printers.send(*job.forPrinter, outcome.printer)
                                         : failure(job.forPrinter.error());
        if (sent)
            return outcome;
        outcome.fault = sent.error();
    }
    if (!job.forFile) {
        outcome.fault = job.forFile.error();
        return outcome;
    }
    const bool there = QDir().mkpath(job.folder);
    const QString path = freeName(job.folder, job.name, QStringLiteral(".pdf"));
    if (there && ui::savePdf(*job.forFile, path))
        outcome.file = path;
    else
        outcome.fault = ui::PrintFault::CannotWrite;
    return outcome;
}

}  // namespace bathside::app
