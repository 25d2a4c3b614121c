#include "core/record/event_table.h"

#include <array>

#include "core/trail/boot_id.h"

namespace bathside {
namespace {

constexpr std::array kColumns{
    TableColumn{"seq", ""},        TableColumn{"at", kInstant},   TableColumn{"offset", ""},
    TableColumn{"kind", ""},       TableColumn{"person", ""},     TableColumn{"proof", ""},
    TableColumn{"payload", ""},    TableColumn{"station", ""},    TableColumn{"tap", ""},
    TableColumn{"place", ""},      TableColumn{"by_receipt", ""}, TableColumn{"card", ""},
    TableColumn{"boot", "us"},     TableColumn{"boot_id", ""},    TableColumn{"spool_seq", ""},
    TableColumn{"spool_hash", ""}, TableColumn{"hash", ""}};

}  // namespace

std::span<const TableColumn> eventColumns() { return kColumns; }

CsvWriter eventTable(CsvDialect dialect) { return {dialect, kColumns}; }

void writeEvent(Table& table, const Entry& entry, const LocalInstant& at)
{
    table.whole(entry.seq);
    table.instant(at);
    table.offset(at);
    table.text(entry.kind);
    table.text(entry.person ? entry.person->id.text : "");
    table.word(entry.person ? nameOf(entry.person->proof) : std::string_view());
    table.text(entry.payload);
    table.text(entry.station.text);
    table.text(entry.tap.text);
    table.text(entry.place.text);
    table.yesNo(entry.byReceipt);
    table.text(entry.card.text);
    table.whole(entry.boot.count());
    table.word(toText(entry.bootId));
    entry.spool ? table.whole(entry.spool->seq) : table.none();
    table.word(entry.spool ? toHex(entry.spool->hash) : "");
    table.word(toHex(entry.hash));
    table.endRow();
}

}  // namespace bathside
