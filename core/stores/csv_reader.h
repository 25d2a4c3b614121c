#pragma once

// A table of text in cells: RFC 4180, in UTF-8 with or without a byte order mark, lines ending in
// CRLF, LF or CR. The separator is what the head line has outside quotes: a semicolon, else a tab,
// else a comma. Empty lines are passed over.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

namespace bathside {

struct CsvRow {
    int line = 0;  // where it begins, from 1
    std::vector<std::string> cells;
};

struct CsvTable {
    char separator = ',';
    std::vector<CsvRow> rows;  // the head line first
};

struct CsvFault {
    enum class Kind : std::uint8_t { NotUtf8, OpenQuote, TextAfterQuote };
    Kind kind{};
    int line = 0;
};

[[nodiscard]] Result<CsvTable, CsvFault> csvFrom(std::string_view text);

}  // namespace bathside
