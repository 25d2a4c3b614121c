#include "core/record/event_table.h"

#include <array>

#include "core/trail/boot_id.h"

namespace bathside {
namespace {

constexpr std::array kColumns{
    CsvColumn{"seq", ""},        CsvColumn{"at", kInstant},   CsvColumn{"offset", ""},
    CsvColumn{"kind", ""},       CsvColumn{"person", ""},     CsvColumn{"proof", ""},
    CsvColumn{"payload", ""},    CsvColumn{"station", ""},    CsvColumn{"tap", ""},
    CsvColumn{"place", ""},      CsvColumn{"by_receipt", ""}, CsvColumn{"card", ""},
    CsvColumn{"boot", "us"},     CsvColumn{"boot_id", ""},    CsvColumn{"spool_seq", ""},
    CsvColumn{"spool_hash", ""}, CsvColumn{"hash", ""}};

}  // namespace

CsvWriter eventTable(CsvDialect dialect) { return {dialect, kColumns}; }

void writeEvent(CsvWriter& csv, const Entry& entry, const LocalInstant& at)
{
    csv.whole(entry.seq);
    csv.instant(at);
    csv.offset(at);
    csv.text(entry.kind);
    csv.text(entry.person ? entry.person->id.text : "");
    csv.word(entry.person ? nameOf(entry.person->proof) : std::string_view());
    csv.text(entry.payload);
    csv.text(entry.station.text);
    csv.text(entry.tap.text);
    csv.text(entry.place.text);
    csv.yesNo(entry.byReceipt);
    csv.text(entry.card.text);
    csv.whole(entry.boot.count());
    csv.word(toText(entry.bootId));
    entry.spool ? csv.whole(entry.spool->seq) : csv.none();
    csv.word(entry.spool ? toHex(entry.spool->hash) : "");
    csv.word(toHex(entry.hash));
    csv.endRow();
}

}  // namespace bathside
