#pragma once

// The record of one day or several, as files that need no Bathside to read.
//
// `events.jsonl` has the exact entries, one a line (json_lines.h); `events.csv`, `ampoules.csv`,
// `bags.csv` and `deviations.csv` the same for programs, and with `-sheet` in their names for
// spreadsheets; `record.xlsx` the four as one workbook; `manifest.json` what they are (manifest.h),
// signed where there is a key (manifest_seal.h). An entry of a kind that this program
// does not know yet stands in the lines and in the table of events, not in the other sheets.
// Entries stream through, one pass, so that the size of an export does not matter; only the sheets
// of one shift are held, and a workbook.

#include <array>
#include <memory>
#include <string>
#include <vector>

#include "core/base/local_days.h"
#include "core/record/csv.h"
#include "core/record/manifest.h"
#include "core/record/sink.h"
#include "core/trail/ports.h"

namespace bathside {

class SealKey;

/// The kinds of event before an export that its sheets are judged by.
inline constexpr std::array<std::string_view, 5> kContextKinds{
    "station.started", "card.adopted", "probe.described", "card.approved", "person.listed"};

/// A file that comes as it is; the manifest counts it as any other.
struct WholeFile {
    std::string name;
    std::string bytes;
};

struct ExportOrder {
    std::string zone;
    std::chrono::year_month_day firstDay;
    std::chrono::year_month_day lastDay;  // within
    std::string version;                  // of the program
    std::vector<SeqRange> runs;           // what the record of these days is: in order, apart
    std::vector<Entry> context;           // entries of kContextKinds before the first run, in order
    std::vector<Entry> later{};      // that point back into a shift of the runs, and the first seal
                                     // after them; in order
    Head origin;                     // what the trail file's first entry follows
    bool lines = true;               // events.jsonl
    std::vector<CsvDialect> sheets;  // in which dialects the sheets are wanted; each at most once
    std::vector<WholeFile> also{};   // made elsewhere, of the same days: the day sheet on paper
    Book* book = nullptr;            // where a workbook is wanted
    std::vector<Seq>* damaged = nullptr;   // where it is wanted which entries of known kinds cannot
                                           // be read: the sheets have nothing of them
    std::shared_ptr<const SealKey> key{};  // none: the manifest is not signed
};

struct ExportFault {
    enum class Kind : std::uint8_t {
        NoSuchZone,
        NoSuchDay,   // the zone left that date out, or the last day is before the first
        Incomplete,  // the trail has no entry `seq`
        Trail,       // the store would not
        Sink,        // a file could not be written
    };
    Kind kind{};
    Seq seq = 0;
    StoreTrouble trouble;
    SinkFault sink;
};

/// The days' first instant and the first one after them.
[[nodiscard]] Result<LocalDay, ExportFault> periodOf(const LocalDays& days, std::string_view zone,
                                                     std::chrono::year_month_day first,
                                                     std::chrono::year_month_day last);

[[nodiscard]] Result<Manifest, ExportFault> exportRecord(const TrailStore& trail,
                                                         const ExportOrder& order,
                                                         const LocalDays& days, Sink& sink);

}  // namespace bathside
