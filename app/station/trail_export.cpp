// The record's exports: each on a thread of its own, as a stick may be slow, which reads the trail
// in slices.

#include <QThreadPool>
#include <memory>

#include "app/station/record_places.h"
#include "app/station/sliced_trail.h"
#include "app/station/trail_record.h"
#include "app/station/trail_tell.h"
#include "app/system/xlsx_book.h"
#include "core/base/rfc3339.h"
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
    store::StoreThread* store = nullptr;
    QThreadPool* threads = nullptr;
    SlicedTrail::Stop stop;
    std::vector<store::SoundPart> parts;  // the earlier files of a trail that goes on after damage
    ui::ExportAnswer answer;
    store::DaysWanted wanted;
    ExportOrder order;
    std::unique_ptr<const SlicedTrail> trail;
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

    void begin()
    {
        store::EarlierDays earlier;
        if (!parts.empty()) {
            const auto period = periodOf(store::ZoneDays(), wanted.zone, wanted.first, wanted.last);
            if (period)
                earlier = store::earlierDays(parts, *period);
        }
        if (const auto fault = takeOrder(earlier))
            return end(*fault);
        if (order.runs.empty())
            return end({});
        if (!isForPaper && answer.days.count() > ui::ExportAnswer::kMostDaysOnPaper)
            return write();
        draw();
    }

    /// What has to be exported, as the store's thread knows it.
    std::optional<ExportFault> takeOrder(store::EarlierDays& earlier)
    {
        struct Known {
            Result<ExportOrder, ExportFault> order;
            Head head;
        };
        auto known = store
                         ->ask([this, &earlier](store::TrailDb& db) -> Result<Known, StoreTrouble> {
                             Known found{store::orderFor(db, store::ZoneDays(), wanted), db.head()};
                             if (found.order && !parts.empty()) {
                                 if (const auto done = prepend(earlier, db, *found.order); !done)
                                     return failure(done.error());
                             }
                             return found;
                         })
                         .get();
        if (!known)
            return faultOf(known.error());
        if (!known->order)
            return known->order.error();
        order = std::move(*known->order);
        trail = std::make_unique<const SlicedTrail>(*store, known->head, std::move(earlier.entries),
                                                    stop);
        return {};
    }

    /// Collects the day sheet; its letters are set on the UI thread.
    void draw()
    {
        const auto sheet = daySheetOf(*trail, order);
        if (!sheet)
            return end(sheet.error());
        if (isForPaper)
            return tellSheet(std::make_shared<const DaySheet>(*sheet), {});
        tell(guard, [job = shared_from_this(), day = *sheet](TrailRecord& record) {
            job->threads->start([job, pages = record.drawn(day)] {
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

    void write()
    {
        const QString place = answer.folder;
        QString name = QString::fromStdString(isoText(order.firstDay));
        if (order.lastDay != order.firstDay)
            name += u'_' + QString::fromStdString(isoText(order.lastDay));
        answer.folder = freeName(place, name, {});
        const store::ZoneDays days;
        store::FolderSink sink(answer.folder.toStdString());
        XlsxBook book;
        order.book = &book;
        order.damaged = &answer.damaged;
        auto manifest = exportRecord(*trail, order, days, sink);
        order.book = nullptr;
        order.damaged = nullptr;
        if (!manifest)
            return end(manifest.error());
        answer.manifest = std::move(*manifest);
        end({});
    }
};

TrailRecord::~TrailRecord()
{
    m_stop->store(true);
    m_threads.waitForDone();
}

void TrailRecord::start(const std::shared_ptr<ExportJob>& job)
{
    job->guard = this;
    job->store = &m_session.store();
    job->threads = &m_threads;
    job->stop = m_stop;
    job->parts = m_session.earlier();
    job->wanted.first = job->answer.days.first;
    job->wanted.last = job->answer.days.last;
    job->wanted.version = BATHSIDE_VERSION;
    job->wanted.zone = zone();
    m_threads.start([job] { job->begin(); });
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
