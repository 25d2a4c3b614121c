#include "core/stores/csv_reader.h"

#include <optional>

#include "core/trail/json_text.h"

namespace bathside {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

char separatorOf(std::string_view text)
{
    bool quoted = false;
    bool tab = false;
    for (const char c : text) {
        if (c == '"')
            quoted = !quoted;
        if (!quoted && (c == '\n' || c == '\r'))
            break;
        if (!quoted && c == ';')
            return ';';
        tab = tab || (!quoted && c == '\t');
    }
    return tab ? '\t' : ',';
}

int lineOfFirstBadByte(std::string_view text)
{
    int line = 1;
    while (!text.empty()) {
        const std::size_t length = utf8Length(text);
        if (length == 0)
            break;
        line += text.front() == '\n' ? 1 : 0;
        text.remove_prefix(length);
    }
    return line;
}

class Reader {
public:
    Reader(std::string_view text, char separator) : m_text(text), m_separator(separator) {}

    Result<CsvTable, CsvFault> read()
    {
        CsvTable table{m_separator, {}};
        while (m_at < m_text.size()) {
            CsvRow row{m_line, {}};
            if (const auto fault = readRow(row))
                return failure(*fault);
            const bool isEmpty = row.cells.size() == 1 && row.cells.front().empty();
            if (!isEmpty)
                table.rows.push_back(std::move(row));
        }
        return table;
    }

private:
    [[nodiscard]] bool ends() const { return m_at == m_text.size(); }
    [[nodiscard]] char here() const { return m_text[m_at]; }
    [[nodiscard]] bool endsLine() const { return here() == '\n' || here() == '\r'; }

    std::optional<CsvFault> readRow(CsvRow& row)
    {
        while (true) {
            std::string& cell = row.cells.emplace_back();
            const bool isQuoted = !ends() && here() == '"';
            if (const auto fault = isQuoted ? readQuoted(cell) : readPlain(cell))
                return fault;
            if (ends() || endsLine())
                break;
            ++m_at;  // the separator
        }
        passLineEnd();
        return std::nullopt;
    }

    std::optional<CsvFault> readPlain(std::string& cell)
    {
        while (!ends() && !endsLine() && here() != m_separator)
            cell += m_text[m_at++];
        return std::nullopt;
    }

    std::optional<CsvFault> readQuoted(std::string& cell)
    {
        const int began = m_line;
        ++m_at;
        while (!ends()) {
            const char c = m_text[m_at++];
            if (c == '"' && (ends() || here() != '"'))
                return afterQuote();
            if (c == '"')
                ++m_at;  // a doubled quote is one
            if (c == '\n')
                ++m_line;
            cell += c;
        }
        return CsvFault{CsvFault::Kind::OpenQuote, began};
    }

    [[nodiscard]] std::optional<CsvFault> afterQuote() const
    {
        if (ends() || endsLine() || here() == m_separator)
            return std::nullopt;
        return CsvFault{CsvFault::Kind::TextAfterQuote, m_line};
    }

    void passLineEnd()
    {
        if (ends())
            return;
        const bool isCrLf = here() == '\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == '\n';
        m_at += isCrLf ? 2 : 1;
        ++m_line;
    }

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    int m_line = 1;
};

}  // namespace

Result<CsvTable, CsvFault> csvFrom(std::string_view text)
{
    if (!isUtf8(text))
        return failure(CsvFault{CsvFault::Kind::NotUtf8, lineOfFirstBadByte(text)});
    if (text.starts_with(kByteOrderMark))
        text.remove_prefix(kByteOrderMark.size());
    return Reader(text, separatorOf(text)).read();
}

}  // namespace bathside
