#pragma once

// Tables as text: RFC 4180 (UTF-8, CRLF, quotes doubled), in two named dialects.
//
// For programs: comma, decimal point, instants as RFC 3339 UTC. For spreadsheets: a byte order
// mark, the semicolon where the decimal sign is a comma, numbers and local times as the sheet reads
// them. Column heads carry the unit in both. Free text that a spreadsheet would run as a formula
// gets an apostrophe in front (OWASP ASVS 5, 1.2.10, and full-width forms); numbers never do. The
// exact text is in the JSON Lines beside the sheet.

#include <chrono>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/base/time.h"

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

struct CsvColumn {
    std::string_view name;  // words joined by '_'
    std::string_view unit;  // empty: none; kInstant: an instant
};
inline constexpr std::string_view kInstant = "instant";

/// An instant with the offset of local time in force then.
struct LocalInstant {
    WallTime at{};
    std::chrono::seconds offset{};
};

/// `+01:00`; seconds, which only zones of long ago have, are cut off.
[[nodiscard]] std::string offsetText(std::chrono::seconds offset);

/// Writes one table cell by cell into a text of its own, which may be taken out between rows.
class CsvWriter {
public:
    CsvWriter(CsvDialect dialect, std::span<const CsvColumn> columns);

    void text(std::string_view free);  // what a person or a device wrote
    void word(std::string_view ours);  // a word or an id that this program made
    void whole(std::int64_t value);
    /// `count` of a unit of 10^-decimals: 400000 with 3 is 400.000.
    void scaled(std::int64_t count, int decimals);
    void yesNo(bool value);
    void instant(const LocalInstant& at);
    void offset(const LocalInstant& at);
    void none();
    void endRow();

    /// What has been written since the last time.
    [[nodiscard]] std::string take();

private:
    void cell(std::string_view content, bool isQuoted = false);

    CsvDialect m_dialect;
    std::string m_text;
    bool m_inRow = false;
};

}  // namespace bathside
