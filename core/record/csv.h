#pragma once

// Tables as text: RFC 4180 (UTF-8, CRLF, quotes doubled), in two named dialects.
//
// For programs: comma, decimal point, instants as RFC 3339 UTC. For spreadsheets: a byte order
// mark, the semicolon where the decimal sign is a comma, numbers and local times as the sheet reads
// them. Column heads carry the unit in both. Free text that a spreadsheet would run as a formula
// gets an apostrophe in front (OWASP ASVS 5, 1.2.10, full-width forms, and any of these after
// blanks, which some spreadsheets drop); numbers never do. The exact text is in the JSON Lines
// beside the sheet.

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "core/record/table.h"

namespace bathside {

struct CsvDialect {
    enum class For : std::uint8_t { Programs, Spreadsheets };
    For use = For::Programs;
    char decimalSign = '.';

    [[nodiscard]] static CsvDialect forPrograms() { return {}; }
    [[nodiscard]] static CsvDialect forSpreadsheets(char decimalSign)
    {
        return {For::Spreadsheets, decimalSign};
    }
    [[nodiscard]] char separator() const { return decimalSign == ',' ? ';' : ','; }
    friend bool operator==(const CsvDialect&, const CsvDialect&) = default;
};

/// Writes one table cell by cell into a text of its own, which may be taken out between rows.
class CsvWriter final : public Table {
public:
    CsvWriter(CsvDialect dialect, std::span<const TableColumn> columns);

    void text(std::string_view free) override;
    void word(std::string_view ours) override;
    void whole(std::int64_t value) override;
    void scaled(std::int64_t count, int decimals) override;
    void instant(const LocalInstant& at) override;
    void offset(const LocalInstant& at) override;
    void none() override;
    void endRow() override;

    /// What has been written since the last time.
    [[nodiscard]] std::string take();

private:
    void cell(std::string_view content, bool isQuoted = false);

    CsvDialect m_dialect;
    std::string m_text;
    bool m_inRow = false;
};

}  // namespace bathside
