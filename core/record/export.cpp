#include "core/record/export.h"

#include <array>
#include <cstdio>
#include <memory>
#include <utility>

#include "core/record/event_table.h"
#include "core/record/manifest_seal.h"
#include "core/record/sheets.h"
#include "core/trail/event_form.h"
#include "core/trail/json_lines.h"
#include "core/trail/seal.h"

namespace bathside {
namespace {

constexpr std::size_t kPiece = 64 * 1024;

using Done = Result<void, SinkFault>;

// A file of the export on its way: gathers pieces, and knows its size and digest when it is done.
class Output {
public:
    Output(std::string name, std::unique_ptr<SinkFile> file) : m_file(std::move(file))
    {
        m_listed.name = std::move(name);
    }

    Done add(std::string_view bytes)
    {
        m_waiting += bytes;
        return m_waiting.size() < kPiece ? Done() : write();
    }

    Done finish()
    {
        if (const auto written = write(); !written)
            return written;
        m_listed.sha256 = m_digest.finish();
        return m_file->finish();
    }

    [[nodiscard]] const Manifest::File& listed() const { return m_listed; }

private:
    Done write()
    {
        m_digest.add(m_waiting);
        m_listed.bytes += static_cast<std::int64_t>(m_waiting.size());
        const auto written = m_file->write(m_waiting);
        m_waiting.clear();
        return written;
    }

    std::unique_ptr<SinkFile> m_file;
    Manifest::File m_listed;
    Sha256 m_digest;
    std::string m_waiting;
};

std::string sheetName(std::string_view sheet, CsvDialect dialect)
{
    const bool forPrograms = dialect.use == CsvDialect::For::Programs;
    return std::string(sheet) + (forPrograms ? ".csv" : "-sheet.csv");
}

std::string isoDate(std::chrono::year_month_day date)
{
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", int(date.year()),
                  unsigned(date.month()), unsigned(date.day()));
    return text.data();
}

struct EventSheet {
    CsvWriter csv;
    std::unique_ptr<Output> output;
};

class Export {
public:
    Export(const ExportOrder& order, const LocalDays& days, Sink& sink)
        : m_order(order), m_sink(sink), m_fold(days, order.zone, order.sheets, order.later)
    {
    }

    Result<Manifest, ExportFault> run(const TrailStore& trail, LocalDay period)
    {
        m_manifest.head = trail.head();
        begin(period);
        for (const SeqRange& range : m_order.runs)
            read(trail, range);
        finishEvents();
        writeSheets();
        for (const WholeFile& file : m_order.also)
            writeWhole(file.name, file.bytes);
        writeBook();
        writeManifest();
        if (m_fault)
            return failure(*m_fault);
        return std::move(m_manifest);
    }

private:
    void begin(LocalDay period)
    {
        m_manifest.version = m_order.version;
        m_manifest.zone = m_order.zone;
        m_manifest.firstDay = isoDate(m_order.firstDay);
        m_manifest.lastDay = isoDate(m_order.lastDay);
        m_manifest.from = period.start;
        m_manifest.to = period.end;
        m_manifest.runs = m_order.runs;
        for (const Entry& entry : m_order.context) {
            if (const auto event = eventOf(entry))
                m_fold.begin(*event);
        }
        if (m_order.lines)
            m_lines = open(std::string(kEventsFile));
        for (const CsvDialect dialect : m_order.sheets)
            m_events.push_back({eventTable(dialect), open(sheetName("events", dialect))});
        if (!m_order.book)
            return;
        m_bookEvents = &m_order.book->add("events", eventColumns());
        m_fold.alsoInto(*m_order.book);
    }

    void read(const TrailStore& trail, SeqRange range)
    {
        if (m_fault)
            return;
        const bool isFirst = range.first == m_order.origin.seq + 1;
        auto previous = isFirst ? std::optional(m_order.origin.hash) : std::nullopt;
        Seq next = isFirst ? range.first : range.first - 1;
        const auto done = trail.read(next, range.last, [&](const Entry& entry) {
            if (entry.seq != next)
                return false;
            if (next++ < range.first)
                previous = entry.hash;
            else
                take(entry, std::exchange(previous, std::nullopt));
            return !m_fault;
        });
        if (!done)
            fail({.kind = ExportFault::Kind::Trail,
                  .seq = next,
                  .trouble = done.error(),
                  .sink = {}});
        else if (next <= range.last)
            fail({.kind = ExportFault::Kind::Incomplete, .seq = next, .trouble = {}, .sink = {}});
    }

    void take(const Entry& entry, const std::optional<Hash>& previous)
    {
        const auto event = eventOf(entry);
        if (event)
            m_fold.take(*event);
        else if (m_order.damaged && event.error().key != entry.kind)
            m_order.damaged->push_back(entry.seq);
        if (m_lines)
            keep(m_lines->add(toLine({entry, entry.seq == 1 ? std::nullopt : previous}) + "\n"));
        for (EventSheet& sheet : m_events) {
            writeEvent(sheet.csv, entry, m_fold.local(entry.at));
            if (sheet.output)
                keep(sheet.output->add(sheet.csv.take()));
        }
        if (m_bookEvents)
            writeEvent(*m_bookEvents, entry, m_fold.local(entry.at));
        m_lastAt = entry.at;
        ++m_manifest.count;
        m_manifest.last = {entry.seq, entry.hash};
        m_manifest.station = entry.station.text;
        m_manifest.rehearsal = m_fold.state().bench.rehearsal;
    }

    void finishEvents()
    {
        if (m_lines)
            finish(*m_lines);
        for (EventSheet& sheet : m_events) {
            if (sheet.output)
                keep(sheet.output->add(sheet.csv.take()));  // the head, where there was no row
            if (sheet.output)
                finish(*sheet.output);
        }
    }

    void writeSheets()
    {
        auto sheets = m_fold.finish();
        for (std::size_t i = 0; i < sheets.size(); ++i) {
            const CsvDialect dialect = m_order.sheets[i];
            writeWhole(sheetName("ampoules", dialect), sheets[i].ampoules.take());
            writeWhole(sheetName("bags", dialect), sheets[i].bags.take());
            writeWhole(sheetName("deviations", dialect), sheets[i].deviations.take());
        }
    }

    void writeBook()
    {
        if (m_fault || !m_order.book)
            return;
        const auto bytes = m_order.book->finish(m_lastAt);
        if (!bytes)
            return keep(failure(SinkFault{std::string(kBookFile), bytes.error()}));
        writeWhole(std::string(kBookFile), *bytes);
    }

    /// Its key and signature before it, as whatever has a manifest is whole.
    void writeManifest()
    {
        if (m_order.key)
            m_manifest.key = m_order.key->publicKey();
        const Manifest described = m_manifest;
        const std::string text = manifestText(described);
        if (m_order.key) {
            writeWhole(std::string(kKeyFile), pemOf(described.key));
            writeWhole(std::string(kSignatureFile), m_order.key->rawSignatureOf(text));
        }
        writeWhole(std::string(kManifestFile), text);
        m_manifest = described;
    }

    void writeWhole(const std::string& name, const std::string& bytes)
    {
        const auto output = open(name);
        if (!output)
            return;
        keep(output->add(bytes));
        finish(*output);
    }

    std::unique_ptr<Output> open(const std::string& name)
    {
        if (m_fault)
            return nullptr;
        auto file = m_sink.open(name);
        if (file)
            return std::make_unique<Output>(name, std::move(*file));
        keep(failure(file.error()));
        return nullptr;
    }

    void finish(Output& output)
    {
        if (m_fault)
            return;
        keep(output.finish());
        m_manifest.files.push_back(output.listed());
    }

    void keep(const Done& done)
    {
        if (!done)
            fail({.kind = ExportFault::Kind::Sink, .seq = 0, .trouble = {}, .sink = done.error()});
    }

    void fail(ExportFault fault)
    {
        if (!m_fault)
            m_fault = std::move(fault);
    }

    const ExportOrder& m_order;
    Sink& m_sink;
    SheetFold m_fold;
    Manifest m_manifest;
    std::unique_ptr<Output> m_lines;
    std::vector<EventSheet> m_events;
    Table* m_bookEvents = nullptr;
    WallTime m_lastAt{};
    std::optional<ExportFault> m_fault;
};

}  // namespace

Result<LocalDay, ExportFault> periodOf(const LocalDays& days, std::string_view zone,
                                       std::chrono::year_month_day first,
                                       std::chrono::year_month_day last)
{
    const auto refuse = [](ExportFault::Kind kind) {
        return failure(ExportFault{.kind = kind, .seq = 0, .trouble = {}, .sink = {}});
    };
    if (!days.offset(zone, WallTime{}))
        return refuse(ExportFault::Kind::NoSuchZone);
    const auto from = days.day(zone, first);
    const auto to = days.day(zone, last);
    if (!from || !to || from->start >= to->end)
        return refuse(ExportFault::Kind::NoSuchDay);
    return LocalDay{from->start, to->end};
}

Result<Manifest, ExportFault> exportRecord(const TrailStore& trail, const ExportOrder& order,
                                           const LocalDays& days, Sink& sink)
{
    const auto period = periodOf(days, order.zone, order.firstDay, order.lastDay);
    if (!period)
        return failure(period.error());
    return Export(order, days, sink).run(trail, *period);
}

}  // namespace bathside
