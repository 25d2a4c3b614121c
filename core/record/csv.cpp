#include "core/record/csv.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/base/rfc3339.h"

namespace bathside {
namespace {

template <std::size_t N>
bool startsWithAny(std::string_view text, const std::array<std::string_view, N>& starts)
{
    return std::ranges::any_of(starts, [&](auto start) { return text.starts_with(start); });
}

// What spreadsheets take for the start of a formula, and what they skip before one.
bool looksLikeFormula(std::string_view text)
{
    static constexpr std::array<std::string_view, 12> kStarts{
        "=",      "+",      "-",      "@",     "\t", "\r", "\n", std::string_view("\0", 1),
        "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"};
    static constexpr std::array<std::string_view, 4> kBlanks{" ", "\u00A0", "\u3000", "\uFEFF"};
    while (!text.empty() && startsWithAny(text, kBlanks))
        text.remove_prefix(text.front() == ' ' ? 1 : text.starts_with("\u00A0") ? 2 : 3);
    return startsWithAny(text, kStarts);
}

// Free text is quoted wherever any common separator stands inside, so that a sheet opened with the
// wrong one does not tear it apart.
bool isTorn(std::string_view text)
{
    return text.find_first_of(",;\t") != std::string_view::npos || text.starts_with(' ') ||
           text.ends_with(' ');
}

std::string quoted(std::string_view content)
{
    std::string text = "\"";
    for (const char c : content)
        text.append(c == '"' ? 2 : 1, c);
    return text + "\"";
}

std::string head(CsvDialect dialect, const TableColumn& column)
{
    if (dialect.use == CsvDialect::For::Programs)
        return headOf(column);
    std::string text(column.name);
    for (char& c : text)
        c = c == '_' ? ' ' : c;
    const std::string_view unit = column.unit == kInstant ? "local" : column.unit;
    return unit.empty() ? text : text.append(" [").append(unit).append("]");
}

}  // namespace

CsvWriter::CsvWriter(CsvDialect dialect, std::span<const TableColumn> columns) : m_dialect(dialect)
{
    if (dialect.use == CsvDialect::For::Spreadsheets)
        m_text = "\xEF\xBB\xBF";
    for (const TableColumn& column : columns)
        cell(head(dialect, column));
    endRow();
}

void CsvWriter::text(std::string_view free)
{
    const std::string safe = (looksLikeFormula(free) ? "'" : "") + std::string(free);
    cell(safe, isTorn(safe));
}

void CsvWriter::word(std::string_view ours) { cell(ours); }
void CsvWriter::whole(std::int64_t value) { cell(std::to_string(value)); }
void CsvWriter::none() { cell(""); }

void CsvWriter::scaled(std::int64_t count, int decimals)
{
    std::string digits = std::to_string(count);
    const std::string sign = count < 0 ? "-" : "";
    digits.erase(0, sign.size());
    const auto places = static_cast<std::size_t>(decimals);
    if (digits.size() <= places)
        digits.insert(0, places + 1 - digits.size(), '0');
    if (places > 0)
        digits.insert(digits.size() - places, 1, m_dialect.decimalSign);
    cell(sign + digits);
}

void CsvWriter::instant(const LocalInstant& at)
{
    if (m_dialect.use == CsvDialect::For::Programs)
        return cell(toRfc3339(at.at));
    std::string local = toRfc3339(at.at + at.offset);  // 2026-03-05T07:10:00.000Z
    local[10] = ' ';
    local[19] = m_dialect.decimalSign;
    local.pop_back();
    cell(local);
}

// Alone, a spreadsheet would run `+01:00`.
void CsvWriter::offset(const LocalInstant& at)
{
    const bool forPrograms = m_dialect.use == CsvDialect::For::Programs;
    cell((forPrograms ? "" : "UTC") + offsetText(at.offset));
}

void CsvWriter::endRow()
{
    m_text += "\r\n";
    m_inRow = false;
}

std::string CsvWriter::take() { return std::exchange(m_text, {}); }

void CsvWriter::cell(std::string_view content, bool isQuoted)
{
    if (m_inRow)
        m_text += m_dialect.separator();
    m_inRow = true;
    const char special[] = {'"', '\r', '\n', m_dialect.separator()};
    if (isQuoted ||
        content.find_first_of(std::string_view(special, sizeof special)) != std::string_view::npos)
        m_text += quoted(content);
    else
        m_text += content;
}

}  // namespace bathside
