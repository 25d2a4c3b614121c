#include "app/system/xlsx_book.h"

#include <QFile>
#include <QString>
#include <QTemporaryDir>
#include <cerrno>
#include <cmath>

#include <xlsxwriter.h>

#include "core/base/rfc3339.h"

namespace bathside::app {
namespace {

constexpr qsizetype kMostSigns = 32'767;  // of a cell: the format's own limit, in UTF-16 units
constexpr std::int64_t kExact = std::int64_t(1) << 53U;  // farther on a double skips whole numbers

bool isHexDigit(QChar c) { return c.isDigit() || (c.toUpper() >= u'A' && c.toUpper() <= u'F'); }

/// `_x0041_` in a cell is read as A (ECMA-376 part 1, ST_Xstring).
bool isEscape(const QString& text, qsizetype at)
{
    if (at + 7 > text.size() || text[at] != u'_' || text[at + 1] != u'x' || text[at + 6] != u'_')
        return false;
    return std::all_of(text.begin() + at + 2, text.begin() + at + 6, isHexDigit);
}

}  // namespace

std::string cellText(std::string_view text)
{
    static const QString kCut = QStringLiteral(" … (cut: whole in events.jsonl)");
    const QString from = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    QString to;
    for (qsizetype i = 0; i < from.size(); ++i) {
        const QChar c = from[i];
        if (isEscape(from, i))
            to += QStringLiteral("_x005F");
        to += c.unicode() >= 0xfffe || c.isNull() ? QChar(QChar::ReplacementCharacter) : c;
    }
    if (to.size() > kMostSigns) {
        to.truncate(kMostSigns - kCut.size());
        if (to.back().isHighSurrogate())
            to.chop(1);
        to += kCut;
    }
    return to.toStdString();
}

struct XlsxBook::File {
    QTemporaryDir folder;
    QByteArray path = QFile::encodeName(folder.filePath(QStringLiteral("book.xlsx")));
    QByteArray scratch = QFile::encodeName(folder.path());
    lxw_workbook* book = nullptr;
    lxw_format *head = nullptr, *decimals = nullptr;

    File()
    {
        lxw_workbook_options options{};
        options.tmpdir = scratch.data();
        options.constant_memory = LXW_TRUE;  // a row at a time: years of rows
        book = workbook_new_opt(path.constData(), &options);
        head = workbook_add_format(book);
        format_set_bold(head);
        decimals = workbook_add_format(book);
        format_set_num_format(decimals, "0.000");
    }
    File(const File&) = delete;
    File& operator=(const File&) = delete;
    ~File()
    {
        if (book)
            lxw_workbook_free(book);
    }
};

class XlsxBook::Sheet final : public Table {
public:
    Sheet(File& file, std::uint32_t rowsEach, std::string_view name,
          std::span<const TableColumn> columns)
        : m_file(file), m_rowsEach(rowsEach), m_name(name)
    {
        for (const TableColumn& column : columns)
            m_heads.push_back(headOf(column));
        begin();
    }

    void text(std::string_view free) override { put(cellText(free)); }
    void word(std::string_view ours) override { put(cellText(ours)); }
    void whole(std::int64_t value) override
    {
        if (value > kExact || value < -kExact)
            return put(std::to_string(value));
        worksheet_write_number(m_sheet, m_row, m_column++, static_cast<double>(value), nullptr);
    }
    void scaled(std::int64_t count, int decimals) override
    {
        if (decimals == 0)
            return whole(count);
        worksheet_write_number(m_sheet, m_row, m_column++,
                               static_cast<double>(count) / std::pow(10, decimals),
                               m_file.decimals);
    }
    void instant(const LocalInstant& at) override { put(toRfc3339(at.at)); }
    void offset(const LocalInstant& at) override { put(offsetText(at.offset)); }
    void none() override { ++m_column; }
    void endRow() override
    {
        m_column = 0;
        if (++m_row == m_rowsEach)
            begin();
    }

private:
    void begin()
    {
        ++m_number;
        const std::string name = m_number == 1 ? m_name : m_name + " " + std::to_string(m_number);
        m_sheet = workbook_add_worksheet(m_file.book, name.c_str());
        m_row = m_column = 0;
        for (const std::string& head : m_heads)
            worksheet_write_string(m_sheet, m_row, m_column++, head.c_str(), m_file.head);
        worksheet_freeze_panes(m_sheet, 1, 0);
        const auto last = static_cast<lxw_col_t>(m_heads.size() - 1);
        worksheet_set_column(m_sheet, 0, last, kWidth, nullptr);
        m_row = 1;
        m_column = 0;
    }

    void put(const std::string& text)
    {
        if (!text.empty())
            worksheet_write_string(m_sheet, m_row, m_column, text.c_str(), nullptr);
        ++m_column;
    }

    static constexpr double kWidth = 14;  // in signs: most values are seen whole

    File& m_file;
    std::uint32_t m_rowsEach;
    std::string m_name;
    std::vector<std::string> m_heads;
    lxw_worksheet* m_sheet = nullptr;
    int m_number = 0;
    lxw_row_t m_row = 0;
    lxw_col_t m_column = 0;
};

XlsxBook::XlsxBook(std::uint32_t rowsEach) : m_file(std::make_unique<File>()), m_rowsEach(rowsEach)
{
}

XlsxBook::~XlsxBook() = default;

Table& XlsxBook::add(std::string_view name, std::span<const TableColumn> columns)
{
    m_sheets.push_back(std::make_unique<Sheet>(*m_file, m_rowsEach, name, columns));
    return *m_sheets.back();
}

Result<std::string, std::int64_t> XlsxBook::finish(WallTime made)
{
    lxw_doc_properties properties{};
    properties.created = std::chrono::floor<std::chrono::seconds>(made).time_since_epoch().count();
    workbook_set_properties(m_file->book, &properties);
    errno = 0;
    const lxw_error written = workbook_close(std::exchange(m_file->book, nullptr));
    const int why = errno;
    if (written != LXW_NO_ERROR)
        return failure(std::int64_t{why});
    QFile file(QFile::decodeName(m_file->path));
    if (!file.open(QIODevice::ReadOnly))
        return failure(std::int64_t{errno});
    return file.readAll().toStdString();
}

}  // namespace bathside::app
