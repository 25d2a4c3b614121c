#pragma once

// Fills the pages of a long sheet from the top: headings, facts, tables, columns of times.
//
// Small letters that are read in the hand. Text breaks into lines and never shrinks; a table that
// goes over a page says its column heads again; nothing is too long. Every page has the sheet's
// name at its head and its number at its foot.

#include <QString>
#include <QStringList>
#include <optional>
#include <utility>
#include <vector>

#include "ui/print/paper.h"

namespace bathside::ui {

struct SheetTable {
    struct Column {
        QString head;
        double share = 0;  // of the width; all of them come to 1
    };
    struct Cell {
        QString text;
        bool strong = false;
    };
    using Row = std::vector<Cell>;

    std::vector<Column> columns;
    std::vector<Row> rows;
    QString none;  // said where there are no rows
};

/// Times as shares of what is allowed, one slot a subject.
struct SheetColumns {
    struct Slot {
        QString label;
        std::optional<double> solid, open;  // 1: all that is allowed
        bool isOver = false;
    };
    QString caption;
    QString limit;  // the word beside the line at 1
    std::vector<Slot> each;
};

class SheetWriter {
public:
    struct Frame {
        QString title, note;  // at the head; the note small beneath the title
        QString banner;       // loud above both; empty: none
        QString foot;         // beside the page's number
    };
    using Facts = std::vector<std::pair<QString, QString>>;

    SheetWriter(Paper paper, Frame frame);

    void heading(const QString& text);
    void paragraph(const QString& text, Weight weight = Weight::Regular);
    /// What is said, line by line; the code beside it, at the right.
    void facts(const Facts& facts, const std::optional<Barcode>& code = {});
    void table(const SheetTable& table);
    void columns(const SheetColumns& columns);
    /// Once all is written.
    [[nodiscard]] PaperPages pages();

private:
    // mm; the letters' are the heights of capitals
    static constexpr double kCaps = 1.8, kSmallCaps = 1.5;
    static constexpr double kBetween = 1.5;  // columns

    struct Lines {
        QRectF room;  // of the cell: left and width
        QStringList lines;
        Weight weight = Weight::Regular;
    };
    using Cells = std::vector<Lines>;

    void begin();
    void foot(PaperPage& page, std::size_t number) const;
    [[nodiscard]] double leftPx() const;  // height, the foot's not counted
    [[nodiscard]] bool isFresh() const { return m_rows.left().top() <= m_top; }
    void need(double px);
    QRectF take(double px);
    void text(const QRectF& room, const QString& words, double capMm, Weight weight,
              Qt::Alignment alignment);
    void hair(double y);
    void put(const Cells& cells, const Cells* heads);
    void putHeads(const Cells& heads);
    void putPart(const Cells& cells, qsizetype from, qsizetype count);
    [[nodiscard]] Cells cellsOf(const SheetTable& table, const SheetTable::Row& row) const;
    [[nodiscard]] Cells headsOf(const SheetTable& table) const;
    void slotsOf(const SheetColumns& columns, std::size_t from, std::size_t count, double slotPx);
    void bar(const QRectF& room, double share, bool isSolid);

    Paper m_paper;
    Frame m_frame;
    PaperPages m_pages;
    Rows m_rows{QRectF()};
    double m_top = 0;
};

/// Lines that are no wider than that; a word that is, is broken.
[[nodiscard]] QStringList wrapped(const QString& text, double widthPx, double capMm, Weight weight);

}  // namespace bathside::ui
