// The record's exports: gathered in slices on the store's thread, written from that copy on a
// thread of their own.

#include <QThreadPool>
#include <algorithm>
#include <memory>

#include "app/station/record_places.h"
#include "app/station/trail_record.h"
#include "app/station/trail_tell.h"
#include "app/system/xlsx_book.h"
#include "core/base/rfc3339.h"
#include "core/record/copied_day.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/folder_sink.h"
#include "core/trail/store/zone_days.h"
#include "ui/print/press.h"

namespace bathside::app {
namespace {

std::string isoText(ui::Date date)
{
    return toRfc3339(WallTime{std::chrono::sys_days(date)}).substr(0, 10);
}

ExportFault faultOf(const StoreTrouble& trouble)
{
    return {.kind = ExportFault::Kind::Trail, .seq = 0, .trouble = trouble, .sink = {}};
}

}  // namespace

struct ExportJob : std::enable_shared_from_this<ExportJob> {
    QPointer<TrailRecord> guard;
    ui::ExportAnswer answer;
    store::DaysWanted wanted;
    ExportOrder order;
    Head head;
    std::optional<store::EarlierDays> earlier;  // of a trail that goes on after damage
    std::vector<Entry> entries;
    bool isForPaper = false;  // the day sheet alone, not to be written here

    void end(std::optional<ExportFault> fault)
    {
        if (isForPaper)
            return tellSheet({}, std::move(fault));
        answer.fault = std::move(fault);
        tell(guard, [done = answer](TrailRecord& record) { emit record.exported(done); });
    }

    void tellSheet(std::shared_ptr<const DaySheet> sheet, std::optional<ExportFault> fault)
    {
        const ui::SheetAnswer read{answer.days.first, std::move(sheet), std::move(fault)};
        tell(guard, [read](TrailRecord& record) { emit record.sheetRead(read); });
    }

    /// Collects the day sheet on a thread of its own; its letters are set on the UI thread.
    void draw()
    {
        const auto sheet = daySheetOf(CopiedDay(head, entries), order);
        if (!sheet)
            return end(sheet.error());
        if (isForPaper)
            return tellSheet(std::make_shared<const DaySheet>(*sheet), {});
        tell(guard, [job = shared_from_this(), day = *sheet](TrailRecord& record) {
            const auto pages = record.drawn(day);
            QThreadPool::globalInstance()->start([job, pages] {
                job->add(pages);
                job->write();
            });
        });
    }

    void add(const Result<ui::SetPages, ui::PrintFault>& pages)
    {
        auto bytes =
            pages ? ui::pdfOf(*pages) : Result<std::string, ui::PrintFault>(failure(pages.error()));
        if (bytes)
            order.also.push_back({std::string(kSheetFile), std::move(*bytes)});
        else
            answer.sheetFault = bytes.error();
    }

    /// On a thread of its own: a stick may be slow.
    void write()
    {
        const QString place = answer.folder;
        QString name = QString::fromStdString(isoText(order.firstDay));
        if (order.lastDay != order.firstDay)
            name += u'_' + QString::fromStdString(isoText(order.lastDay));
        answer.folder = freeName(place, name, {});
        const CopiedDay copy(head, std::move(entries));
        const store::ZoneDays days;
        store::FolderSink sink(answer.folder.toStdString());
        XlsxBook book;
        order.book = &book;
        auto manifest = exportRecord(copy, order, days, sink);
        order.book = nullptr;
        if (!manifest)
            return end(manifest.error());
        answer.manifest = std::move(*manifest);
        end({});
    }
};

namespace {

/// The entry before each run, too: its hash is what the run's first line says it follows.
std::vector<SeqRange> withPrevious(std::vector<SeqRange> runs, const Head& origin)
{
    for (SeqRange& run : runs)
        run.first = std::max(run.first - 1, origin.seq + 1);
    return runs;
}

/// The order, and then the entries in slices; on the store's thread.
void gather(const std::shared_ptr<ExportJob>& job, store::StoreThread& store, store::TrailDb& trail)
{
    const store::ZoneDays days;
    auto order = store::orderFor(trail, days, job->wanted);
    if (!order)
        return job->end(order.error());
    job->order = std::move(*order);
    job->head = trail.head();
    const auto inLastFile = withPrevious(job->order.runs, trail.origin().after);
    if (job->earlier) {
        if (const auto done = prepend(*job->earlier, trail, job->order); !done)
            return job->end(faultOf(done.error()));
        job->entries = std::move(job->earlier->entries);
    }
    if (job->order.runs.empty())
        return job->end({});
    store.readSlices(
        inLastFile, kSlice,
        [job](std::vector<Entry> entries) {
            std::ranges::move(entries, std::back_inserter(job->entries));
        },
        [job](const Result<void, StoreTrouble>& done) {
            if (!done)
                return job->end(faultOf(done.error()));
            QThreadPool::globalInstance()->start([job] { job->draw(); });
        });
}

}  // namespace

/// What earlier files have of the days, first; on a thread of its own.
void TrailRecord::start(const std::shared_ptr<ExportJob>& job)
{
    job->guard = this;
    job->wanted.first = job->answer.days.first;
    job->wanted.last = job->answer.days.last;
    job->wanted.version = BATHSIDE_VERSION;
    job->wanted.zone = zone();
    store::StoreThread& store = m_session.store();
    const auto gatherNow = [job, &store] {
        store.run([job, &store](store::TrailDb& trail) { gather(job, store, trail); },
                  [job](const StoreTrouble& trouble) { job->end(faultOf(trouble)); });
    };
    if (m_session.earlier().empty())
        return gatherNow();
    QThreadPool::globalInstance()->start([job, parts = m_session.earlier(), gatherNow] {
        const auto period =
            periodOf(store::ZoneDays(), job->wanted.zone, job->wanted.first, job->wanted.last);
        if (period)
            job->earlier = store::earlierDays(parts, *period);
        tell(job->guard, [gatherNow](TrailRecord&) { gatherNow(); });
    });
}

void TrailRecord::exportDays(const ui::DayRange& days, const QString& folder, char decimalSign)
{
    const auto job = std::make_shared<ExportJob>();
    job->answer.days = days;
    job->answer.folder = folder;
    job->wanted.sheets = {CsvDialect::forPrograms(), CsvDialect::forSpreadsheets(decimalSign)};
    job->wanted.key = m_session.sealKey();
    start(job);
}

void TrailRecord::askSheet(ui::Date date)
{
    const auto job = std::make_shared<ExportJob>();
    job->answer.days = {date, date};
    job->isForPaper = true;
    job->wanted.lines = false;
    start(job);
}

}  // namespace bathside::app
