#pragma once

// Entries as a table: one row each, every column as stored, times in UTC and as local time.

#include "core/record/csv.h"
#include "core/trail/entry.h"

namespace bathside {

[[nodiscard]] std::span<const TableColumn> eventColumns();
[[nodiscard]] CsvWriter eventTable(CsvDialect dialect);
void writeEvent(Table& table, const Entry& entry, const LocalInstant& at);

}  // namespace bathside
