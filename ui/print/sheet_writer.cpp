#include "ui/print/sheet_writer.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <algorithm>
#include <cassert>
#include <cmath>

#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

struct WriterText {
    Q_DECLARE_TR_FUNCTIONS(SheetWriter)
};

// All in mm; the letters' sizes are the heights of capitals.
constexpr double kInset = 12, kFoot = 6, kPageNumber = 40, kCode = 38, kLabel = 34;
constexpr double kBanner = 8, kTitle = 9, kNote = 5.5;
constexpr double kBannerCaps = 3.6, kTitleCaps = 4.2, kHeadingCaps = 2.6;
constexpr double kAround = 0.7;   // above and below a row's words
constexpr double kLongRow = 100;  // a longer one begins where it is
constexpr double kAbove = 4;      // before a heading

double px(double mm) { return theme().metrics().px(mm); }
double lineOf(double capMm) { return heightOf(1, capMm, Weight::Regular); }

QString plain(const QString& text)
{
    QString clean = text;
    for (QChar& sign : clean) {
        if (!sign.isPrint() && !sign.isSurrogate())
            sign = u' ';
    }
    return clean;
}

/// How many signs of the word go on a line; one at least.
qsizetype fitting(const QString& word, double widthPx, const QFontMetricsF& metrics)
{
    qsizetype count = 1, tooMany = word.size() + 1;
    while (tooMany - count > 1) {
        const qsizetype middle = (count + tooMany) / 2;
        const bool fits = metrics.horizontalAdvance(word.left(middle)) <= widthPx;
        (fits ? count : tooMany) = middle;
    }
    return count;
}

}  // namespace

QStringList wrapped(const QString& text, double widthPx, double capMm, Weight weight)
{
    const QFontMetricsF metrics(Metrics::fontOfCapPx(std::ceil(px(capMm)), weight));
    QStringList lines;
    for (QString word : plain(text).split(u' ', Qt::SkipEmptyParts)) {
        const QString longer = lines.isEmpty() ? word : lines.last() + u' ' + word;
        if (!lines.isEmpty() && metrics.horizontalAdvance(longer) <= widthPx) {
            lines.last() = longer;
            continue;
        }
        while (metrics.horizontalAdvance(word) > widthPx && word.size() > 1) {
            const qsizetype count = fitting(word, widthPx, metrics);
            lines.append(word.left(count));
            word = word.mid(count);
        }
        lines.append(word);
    }
    return lines;
}

SheetWriter::SheetWriter(Paper paper, Frame frame) : m_paper(paper), m_frame(std::move(frame))
{
    assert(isSheet(paper));
    begin();
}

// --- the page
// -------------------------------------------------------------------------------------

void SheetWriter::begin()
{
    const bool isFirst = m_pages.empty();
    m_pages.emplace_back(PaperPage{sizeMm(m_paper)});
    m_rows = Rows(sizeMm(m_paper), kInset);
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    if (!m_frame.banner.isEmpty()) {
        const QRectF band = take(px(kBanner));
        for (const double y : {band.top(), band.bottom()})
            m_pages.back().rules.append(QLineF(band.left(), y, band.right(), y));
        text(band, m_frame.banner, kBannerCaps, Weight::Strong, Qt::AlignCenter);
    }
    if (isFirst) {
        text(take(px(kTitle)), m_frame.title, kTitleCaps, Weight::Strong, left);
        text(take(px(kNote)), m_frame.note, kCaps, Weight::Regular, left);
    } else {
        text(take(px(kNote)), m_frame.title + QStringLiteral(" · ") + m_frame.note, kCaps,
             Weight::Regular, left);
    }
    const double y = m_rows.left().top();
    m_pages.back().rules.append(QLineF(m_rows.left().left(), y, m_rows.left().right(), y));
    take(px(kAround));
    m_top = m_rows.left().top();
}

void SheetWriter::foot(PaperPage& page, std::size_t number) const
{
    Rows rows(sizeMm(m_paper), kInset);
    rows.skip(rows.leftMm() - kFoot);
    const Rows right = rows.takeRight(kPageNumber);
    const TextWish wish{kCaps, kSmallCaps, Weight::Regular, 1};
    page.texts.append(
        {m_frame.foot, rows.left(), Qt::AlignLeft | Qt::AlignBottom, wish, Palette::paperInk()});
    page.texts.append({WriterText::tr("page %1 of %2").arg(number).arg(m_pages.size()),
                       right.left(), Qt::AlignRight | Qt::AlignBottom, wish, Palette::paperInk()});
}

PaperPages SheetWriter::pages()
{
    for (std::size_t i = 0; i < m_pages.size(); ++i)
        foot(m_pages[i], i + 1);
    m_pages.front().title = m_frame.title;
    return std::move(m_pages);
}

double SheetWriter::leftPx() const { return m_rows.left().height() - px(kFoot); }

void SheetWriter::need(double px)
{
    if (leftPx() < px && !isFresh())
        begin();
}

QRectF SheetWriter::take(double px) { return m_rows.take(theme().metrics().mm(px)); }

void SheetWriter::text(const QRectF& room, const QString& words, double capMm, Weight weight,
                       Qt::Alignment alignment)
{
    if (!words.isEmpty())
        m_pages.back().texts.append(
            {words, room, alignment, {capMm, kSmallCaps, weight}, Palette::paperInk()});
}

void SheetWriter::hair(double y)
{
    m_pages.back().hairs.append(QLineF(m_rows.left().left(), y, m_rows.left().right(), y));
}

// --- words
// ----------------------------------------------------------------------------------------

void SheetWriter::heading(const QString& words)
{
    // never alone at the foot
    const double high = lineOf(kHeadingCaps), follows = 4 * (lineOf(kCaps) + px(2 * kAround));
    need(px(kAbove) + high + follows);
    if (!isFresh())
        take(px(kAbove));
    text(take(high), words, kHeadingCaps, Weight::Strong, Qt::AlignLeft | Qt::AlignVCenter);
    take(px(kAround));
}

void SheetWriter::paragraph(const QString& words, Weight weight)
{
    const QRectF room = m_rows.left();
    put({{room, wrapped(words, room.width(), kCaps, weight), weight}}, nullptr);
}

void SheetWriter::facts(const Facts& facts, const std::optional<Barcode>& code)
{
    const double codeHigh = code ? px(kCode) : 0;
    need(codeHigh);
    const QRectF all = m_rows.left();
    const std::size_t page = m_pages.size();
    if (code) {
        QRectF room(all.right() - codeHigh, all.top(), codeHigh, codeHigh);
        m_pages.back().barcodes.append({*code, room});
    }
    for (const auto& [name, value] : facts) {
        const bool isBeside =
            code && m_pages.size() == page && m_rows.left().top() < all.top() + codeHigh;
        const double wide = all.width() - px(kLabel) - (isBeside ? codeHigh : 0);
        const QRectF label(all.left(), 0, px(kLabel - kBetween), 0);
        const QRectF room(all.left() + px(kLabel), 0, wide, 0);
        put({{label, wrapped(name, label.width(), kCaps, Weight::Strong), Weight::Strong},
             {room, wrapped(value, wide, kCaps, Weight::Regular), Weight::Regular}},
            nullptr);
    }
    if (code && m_pages.size() == page)
        take(std::max(0.0, all.top() + codeHigh - m_rows.left().top()));
}

// --- tables
// ---------------------------------------------------------------------------------------

SheetWriter::Cells SheetWriter::cellsOf(const SheetTable& table, const SheetTable::Row& row) const
{
    Cells cells;
    QRectF room = m_rows.left();
    for (std::size_t i = 0; i < row.size() && i < table.columns.size(); ++i) {
        const double width = m_rows.left().width() * table.columns[i].share;
        room.setWidth(width - px(kBetween));
        const Weight weight = row[i].strong ? Weight::Strong : Weight::Regular;
        cells.push_back({room, wrapped(row[i].text, room.width(), kCaps, weight), weight});
        room.moveLeft(room.left() + width);
    }
    return cells;
}

SheetWriter::Cells SheetWriter::headsOf(const SheetTable& table) const
{
    SheetTable::Row row;
    for (const SheetTable::Column& column : table.columns)
        row.push_back({column.head, true});
    return cellsOf(table, row);
}

void SheetWriter::table(const SheetTable& table)
{
    if (table.rows.empty())
        return paragraph(table.none);
    const Cells heads = headsOf(table);
    need(4 * (lineOf(kCaps) + px(2 * kAround)));
    putHeads(heads);
    for (const SheetTable::Row& row : table.rows)
        put(cellsOf(table, row), &heads);
}

void SheetWriter::putHeads(const Cells& heads)
{
    qsizetype most = 0;
    for (const Lines& cell : heads)
        most = std::max(most, cell.lines.size());
    putPart(heads, 0, most);
    const double y = m_rows.left().top();
    m_pages.back().rules.append(QLineF(m_rows.left().left(), y, m_rows.left().right(), y));
}

/// A row; over the page's end it goes on, but only where it has to.
void SheetWriter::put(const Cells& cells, const Cells* heads)
{
    qsizetype most = 1;
    for (const Lines& cell : cells)
        most = std::max(most, cell.lines.size());
    const double line = lineOf(kCaps), around = px(2 * kAround);
    const auto mostOnAPage = static_cast<qsizetype>(px(kLongRow) / line);
    for (qsizetype done = 0; done < most;) {
        auto room = static_cast<qsizetype>((leftPx() - around) / line);
        const bool wouldFit = room >= most - done;
        if (!wouldFit && !isFresh() && (done > 0 || room < 1 || most < mostOnAPage)) {
            begin();
            if (heads)
                putHeads(*heads);
            room = static_cast<qsizetype>((leftPx() - around) / line);
        }
        const qsizetype count = std::clamp<qsizetype>(room, 1, most - done);
        putPart(cells, done, count);
        done += count;
    }
    if (heads)
        hair(m_rows.left().top());
}

void SheetWriter::putPart(const Cells& cells, qsizetype from, qsizetype count)
{
    const double line = lineOf(kCaps);
    const QRectF row = take(static_cast<double>(count) * line + px(2 * kAround));
    for (const Lines& cell : cells) {
        for (qsizetype i = from; i < std::min(from + count, cell.lines.size()); ++i) {
            const double top = row.top() + px(kAround) + static_cast<double>(i - from) * line;
            text({cell.room.left(), top, cell.room.width(), line}, cell.lines[i], kCaps,
                 cell.weight, Qt::AlignLeft | Qt::AlignVCenter);
        }
    }
}

}  // namespace bathside::ui
