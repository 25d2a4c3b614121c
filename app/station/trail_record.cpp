#include "app/station/trail_record.h"

#include <QThreadPool>
#include <algorithm>
#include <memory>

#include "app/station/copied_day.h"
#include "app/station/record_places.h"
#include "app/station/trail_copy.h"
#include "app/station/trail_tell.h"
#include "app/system/xlsx_book.h"
#include "core/base/rfc3339.h"
#include "core/trail/store/check.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/folder_sink.h"
#include "core/trail/store/zone_days.h"
#include "ui/print/press.h"

namespace bathside::app {
namespace {

using Guard = QPointer<TrailRecord>;

ui::Date localDay(std::string_view zone, WallTime at)
{
    const store::ZoneDays days;
    const auto offset = days.offset(zone, at).value_or(std::chrono::seconds{0});
    return ui::Date{std::chrono::floor<std::chrono::days>(at + offset)};
}

std::string isoText(ui::Date date)
{
    return toRfc3339(WallTime{std::chrono::sys_days(date)}).substr(0, 10);
}

ExportFault faultOf(const StoreTrouble& trouble)
{
    return {.kind = ExportFault::Kind::Trail, .seq = 0, .trouble = trouble, .sink = {}};
}

/// What of those runs comes after `after`.
std::vector<SeqRange> partAfter(const std::vector<SeqRange>& runs, Seq after)
{
    std::vector<SeqRange> rest;
    for (const SeqRange& run : runs) {
        if (run.last > after)
            rest.push_back({std::max(run.first, after + 1), run.last});
    }
    return rest;
}

/// From the first of these days that the zone has to the end of the last one; nothing where it has
/// none of them.
std::optional<LocalDay> spanOf(const std::string& zone, ui::DayRange wanted)
{
    const store::ZoneDays days;
    auto from = days.day(zone, wanted.first);
    while (!from && wanted.first < wanted.last) {
        wanted.first = ui::daysAfter(wanted.first, 1);
        from = days.day(zone, wanted.first);
    }
    auto to = days.day(zone, wanted.last);
    while (!to && wanted.first < wanted.last) {
        wanted.last = ui::daysAfter(wanted.last, -1);
        to = days.day(zone, wanted.last);
    }
    if (!from || !to)
        return std::nullopt;
    return LocalDay{from->start, to->end};
}

/// What lies in the earlier files of a trail that goes on after damage: the entries of these days
/// by their own time, as the indexes may be damaged, too. On a thread of its own.
std::vector<Entry> entriesOf(const std::vector<store::SoundPart>& parts, const std::string& zone,
                             const ui::DayRange& days, Seq after)
{
    const auto span = spanOf(zone, days);
    std::vector<Entry> entries;
    if (!span)
        return entries;
    for (const store::SoundPart& part : parts) {
        const auto file = store::TrailDb::open(part.file, store::Mode::Salvage);
        if (!file)
            continue;
        std::ignore = store::readRows(
            (*file)->connection(), after + 1, part.last, [&](const store::Row& row) {
                if (row.entry && row.entry->at >= span->start && row.entry->at < span->end)
                    entries.push_back(*row.entry);
                return row.seq < part.last;
            });
    }
    return entries;
}

/// Which entries the record of these days is; nothing for days that the zone left out.
Result<std::vector<SeqRange>, StoreTrouble> runsOf(const store::TrailDb& trail,
                                                   const std::string& zone,
                                                   const ui::DayRange& days)
{
    const auto span = spanOf(zone, days);
    if (!span)
        return std::vector<SeqRange>();
    return store::rangesOf(trail, span->start, span->end);
}

/// Its own day, or that of the shift it belongs to, which was opened some days before.
std::optional<ui::Date> dayOf(const store::TrailDb& trail, const std::string& zone, Seq seq)
{
    constexpr int kLongestShift = 3;  // days
    std::optional<WallTime> at;
    const auto read = trail.read(seq, seq, [&](const Entry& entry) {
        at = entry.at;
        return true;
    });
    if (!read || !at)
        return std::nullopt;
    const ui::Date own = localDay(zone, *at);
    for (int back = 0; back <= kLongestShift; ++back) {
        const ui::Date day = ui::daysAfter(own, -back);
        const auto runs = runsOf(trail, zone, {day, day});
        if (runs && std::ranges::any_of(*runs, [seq](const SeqRange& run) {
                return run.first <= seq && seq <= run.last;
            }))
            return day;
    }
    return std::nullopt;
}

// --- verifying in slices ------------------------------------------------------------------------

/// Follows the chain to where the trail stood when asked, a slice at a time on the store's thread.
class ChainWalk : public std::enable_shared_from_this<ChainWalk> {
public:
    ChainWalk(store::StoreThread& store, Guard guard) : m_store(store), m_guard(std::move(guard)) {}

    void queue()
    {
        m_store.run(
            [self = shared_from_this()](store::TrailDb& trail) { self->go(trail); },
            [self = shared_from_this()](const StoreTrouble& trouble) { self->end(trouble); });
    }

private:
    void go(store::TrailDb& trail)
    {
        if (!m_verifier)
            begin(trail);
        if (m_next > m_last) {
            m_agrees = store::projectionsAgree(trail.connection()).value_or(false);
            return end({});
        }
        const Seq to = std::min(m_last, m_next + kSlice - 1);
        const auto read =
            store::readRows(trail.connection(), m_next, to, [this](const store::Row& row) {
                if (row.entry)
                    m_verifier->take(*row.entry);
                else
                    m_verifier->takeUnreadable(
                        row.seq, row.column == "at" ? FlawKind::BadTime : FlawKind::Unreadable,
                        std::string(row.column));
                return true;
            });
        if (!read)
            return end(read.error());
        m_next = to + 1;
        queue();
    }

    void begin(const store::TrailDb& trail)
    {
        m_next = trail.origin().after.seq + 1;
        m_last = trail.head().seq;
        m_verifier.emplace(Expectation{.before = trail.origin().after,
                                       .runs = {},
                                       .witnesses = {trail.head()},
                                       .station = {}});
    }

    void end(const std::optional<StoreTrouble>& trouble)
    {
        ui::VerifyAnswer answer{.chain = m_verifier ? m_verifier->finish() : Verification{},
                                .indexesAgree = m_agrees,
                                .trouble = trouble};
        tell(m_guard, [answer](TrailRecord& record) { emit record.verified(answer); });
    }

    store::StoreThread& m_store;
    Guard m_guard;
    std::optional<Verifier> m_verifier;
    std::optional<bool> m_agrees;
    Seq m_next = 0, m_last = 0;
};

// --- exporting from a copy ----------------------------------------------------------------------

struct ExportJob : std::enable_shared_from_this<ExportJob> {
    Guard guard;
    ui::ExportAnswer answer;
    store::DaysWanted wanted;
    ExportOrder order;
    Head head;
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

/// The order, and then the entries in slices; on the store's thread.
void gather(const std::shared_ptr<ExportJob>& job, store::StoreThread& store, store::TrailDb& trail)
{
    const store::ZoneDays days;
    auto order = store::orderFor(trail, days, job->wanted);
    if (!order)
        return job->end(order.error());
    job->order = std::move(*order);
    job->head = trail.head();
    if (job->order.runs.empty())
        return job->end({});
    store.readSlices(
        job->order.runs, kSlice,
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

TrailRecord::TrailRecord(Session& session, QObject* parent)
    : ui::RecordSource(parent), m_session(session)
{
}

std::string TrailRecord::zone() const
{
    const auto& shift = m_session.station().bench().shift;
    return shift ? shift->zone : "UTC";
}

ui::Date TrailRecord::currentDay() const
{
    const Bench& bench = m_session.station().bench();
    const WallTime at =
        bench.shiftIsOpen() ? bench.shift->opened.at.wall : m_session.station().now().wall;
    return localDay(zone(), at);
}

std::vector<ui::RecordPlace> TrailRecord::places() const { return recordPlaces(); }

void TrailRecord::readDays(const ui::DayRange& days, Seq after)
{
    const auto& parts = m_session.earlier();
    if (parts.empty() || parts.back().last <= after)
        return readLastFile(days, after);
    QThreadPool::globalInstance()->start([=, guard = Guard(this), zone = zone()] {
        tell(guard, [=, entries = entriesOf(parts, zone, days, after)](TrailRecord& record) {
            if (!entries.empty())
                emit record.entriesRead(days, entries);
            record.readLastFile(days, after);
        });
    });
}

void TrailRecord::readLastFile(const ui::DayRange& days, Seq after)
{
    const Guard guard(this);
    const auto done = [guard, days](const std::optional<StoreTrouble>& trouble) {
        tell(guard, [=](TrailRecord& record) { emit record.dayRead(days, trouble); });
    };
    store::StoreThread& store = m_session.store();
    store.run(
        [=, &store, zone = zone()](store::TrailDb& trail) {
            const auto runs = runsOf(trail, zone, days);
            if (!runs)
                return done(runs.error());
            store.readSlices(
                partAfter(*runs, after), kSlice,
                [=](std::vector<Entry> entries) {
                    tell(guard, [days, entries = std::move(entries)](TrailRecord& record) {
                        emit record.entriesRead(days, entries);
                    });
                },
                [=](const Result<void, StoreTrouble>& read) {
                    done(read ? std::nullopt : std::optional(read.error()));
                });
        },
        [=](const StoreTrouble& trouble) { done(trouble); });
}

void TrailRecord::findDay(Seq seq)
{
    const Guard guard(this);
    const auto found = [guard, seq](const std::optional<ui::Date>& day) {
        tell(guard, [=](TrailRecord& record) { emit record.dayFound(seq, day); });
    };
    m_session.store().run(
        [=, zone = zone()](store::TrailDb& trail) { found(dayOf(trail, zone, seq)); },
        [=](const StoreTrouble&) { found(std::nullopt); });
}

void TrailRecord::verify() { std::make_shared<ChainWalk>(m_session.store(), Guard(this))->queue(); }

void TrailRecord::exportDays(const ui::DayRange& days, const QString& folder, char decimalSign)
{
    const auto job = std::make_shared<ExportJob>();
    job->guard = this;
    job->answer.days = days;
    job->answer.folder = folder;
    job->wanted = {.first = days.first,
                   .last = days.last,
                   .version = BATHSIDE_VERSION,
                   .lines = true,
                   .sheets = {CsvDialect::forPrograms(), CsvDialect::forSpreadsheets(decimalSign)},
                   .key = m_session.sealKey()};
    store::StoreThread& store = m_session.store();
    store.run([job, &store](store::TrailDb& trail) { gather(job, store, trail); },
              [job](const StoreTrouble& trouble) { job->end(faultOf(trouble)); });
}

void TrailRecord::askSheet(ui::Date date)
{
    const auto job = std::make_shared<ExportJob>();
    job->guard = this;
    job->answer.days = {date, date};
    job->isForPaper = true;
    job->wanted = {
        .first = date, .last = date, .version = BATHSIDE_VERSION, .lines = false, .sheets = {}};
    store::StoreThread& store = m_session.store();
    store.run([job, &store](store::TrailDb& trail) { gather(job, store, trail); },
              [job](const StoreTrouble& trouble) { job->end(faultOf(trouble)); });
}

void TrailRecord::copyTrail(const QString& folder)
{
    app::copyTrail(m_session, folder, [guard = Guard(this)](const ui::CopyAnswer& answer) {
        if (!guard)
            return;
        guard->m_session.noteCopy(answer);
        emit guard->copied(answer);
    });
}

}  // namespace bathside::app
