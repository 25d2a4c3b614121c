#include "ui/print/plan_sheet.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cassert>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

struct SheetText {
    Q_DECLARE_TR_FUNCTIONS(PlanSheet)
};

// All in mm; capitals of 3 are read from the bench, a good metre away, by healthy eyes.
constexpr double kCellInset = 12;
constexpr double kTitle = 12, kSite = 7, kHeads = 10, kLine = 11, kLot = 5.5, kBag = 9,
                 kSheetFoot = 6;
constexpr double kTitleCaps = 5.5, kLineCaps = 4, kCaps = 3, kHeadCaps = 2.4, kLeastText = 1.8;
constexpr double kBetween = 2;  // between columns

constexpr int kColumns = 8;
using Cells = std::array<QString, kColumns>;
/// Shares of the width: bag, pull, mixed by, first bird, last bird, birds, size, lots.
constexpr std::array<double, kColumns> kShares{0.07, 0.11, 0.11, 0.11, 0.11, 0.12, 0.12, 0.25};

Cells heads()
{
    return {SheetText::tr("bag", "column of the day's plan"),
            SheetText::tr("pull at", "column of the day's plan: when ampoules come out"),
            SheetText::tr("mixed by", "column of the day's plan: at the latest"),
            SheetText::tr("first bird", "column of the day's plan"),
            SheetText::tr("last bird", "column of the day's plan"),
            SheetText::tr("birds", "column of the day's plan"),
            SheetText::tr("size", "column of the day's plan: of the bag"),
            SheetText::tr("lots × ampoules", "column of the day's plan")};
}

QString lotText(const PlanSheet::Lot& lot)
{
    return QStringLiteral("%1 %2 ×\u00a0%3")
        .arg(fromCore(lot.component), fromCore(lot.lot), QLocale().toString(lot.ampoules));
}

Cells cellsOf(const PlanSheet::Bag& bag, std::size_t no)
{
    return {QLocale().toString(static_cast<qulonglong>(no)),
            dayMinuteText(bag.pullStart),
            dayMinuteText(bag.mixedBy),
            dayMinuteText(bag.firstBird),
            dayMinuteText(bag.lastBird),
            countText(bag.birds, QLocale()),
            volumeText(bag.volume),
            {}};
}

double heightOf(const PlanSheet::Bag& bag)
{
    return std::max(kBag, kLot * static_cast<double>(bag.lots.size()) + kBetween);
}

/// Fills pages from the top; a new one begins where the last is full.
class Filler {
public:
    Filler(const PlanSheet& sheet, Paper paper) : m_sheet(sheet), m_mm(sizeMm(paper)) { begin(); }

    void add(const PlanSheet::Line& line)
    {
        const double first = line.bags.empty() ? 0 : heightOf(line.bags.front());
        if (!hasRoom(kLine + first))  // never a line's name alone at the foot
            begin();
        name(line);
        for (std::size_t i = 0; i < line.bags.size(); ++i) {
            if (!hasRoom(heightOf(line.bags[i]))) {
                begin();
                name(line);
            }
            add(line.bags[i], i + 1);
        }
    }

    PaperPages pages()
    {
        for (std::size_t i = 0; i < m_pages.size(); ++i)
            foot(m_pages[i], i + 1);
        return std::move(m_pages);
    }

private:
    void begin()
    {
        m_pages.push_back(PaperPage{m_mm});
        m_rows = Rows(m_mm, kCellInset);
        text(m_rows.take(kTitle), SheetText::tr("Plan for %1", "a day").arg(dayText(m_sheet.day)),
             kTitleCaps, Weight::Strong);
        const QString note = m_sheet.rehearsal ? SheetText::tr("%1, REHEARSAL: not for birds",
                                                               "after the site's name")
                                                     .arg(fromCore(m_sheet.site))
                                               : fromCore(m_sheet.site);
        text(m_rows.take(kSite), note, kCaps, Weight::Regular);
        cells(m_rows.take(kHeads), heads(), kHeadCaps, Weight::Strong);
        rule();
    }

    [[nodiscard]] bool hasRoom(double mm) const { return m_rows.leftMm() >= mm + kSheetFoot; }

    void name(const PlanSheet::Line& line)
    {
        text(m_rows.take(kLine),
             SheetText::tr("Line %1", "heading in the day's plan").arg(fromCore(line.name)),
             kLineCaps, Weight::Strong);
    }

    void add(const PlanSheet::Bag& bag, std::size_t no)
    {
        const QRectF row = m_rows.take(heightOf(bag));
        QRectF last = cells(row, cellsOf(bag, no), kCaps, Weight::Regular);
        last.setHeight(row.height() /
                       static_cast<double>(std::max<std::size_t>(1, bag.lots.size())));
        for (const PlanSheet::Lot& lot : bag.lots) {
            text(last, lotText(lot), kCaps, Weight::Regular);
            last.translate(0, last.height());
        }
        rule();
    }

    /// The room of the last one.
    QRectF cells(const QRectF& row, const Cells& words, double capMm, Weight weight)
    {
        QRectF cell = row;
        for (std::size_t i = 0; i < words.size(); ++i) {
            const double width = row.width() * kShares.at(i);
            cell.setWidth(width - (i + 1 < words.size() ? theme().metrics().px(kBetween) : 0));
            if (!words.at(i).isEmpty())
                text(cell, words.at(i), capMm, weight);
            if (i + 1 < words.size())
                cell.moveLeft(cell.left() + width);
        }
        cell.setRight(row.right());
        return cell;
    }

    void text(const QRectF& room, const QString& words, double capMm, Weight weight)
    {
        put(m_pages.back(), room, words, capMm, weight, Qt::AlignLeft | Qt::AlignVCenter);
    }

    static void put(PaperPage& page, const QRectF& room, const QString& words, double capMm,
                    Weight weight, Qt::Alignment alignment)
    {
        page.texts.append(
            {words, room, alignment, {capMm, kLeastText, weight}, Palette::paperInk()});
    }

    void rule()
    {
        const QRectF left = m_rows.left();
        m_pages.back().rules.append(QLineF(left.topLeft(), left.topRight()));
    }

    void foot(PaperPage& page, std::size_t number) const
    {
        Rows rows(m_mm, kCellInset);
        rows.skip(rows.leftMm() - kSheetFoot);
        const Rows right = rows.takeRight(kPageNumber);
        put(page, rows.left(),
            SheetText::tr("Reckoned %1", "date and time")
                .arg(localDateTimeText(m_sheet.made, m_sheet.zone)),
            kHeadCaps, Weight::Regular, Qt::AlignLeft | Qt::AlignVCenter);
        put(page, right.left(), SheetText::tr("page %1 of %2").arg(number).arg(m_pages.size()),
            kHeadCaps, Weight::Regular, Qt::AlignRight | Qt::AlignVCenter);
    }

    static constexpr double kPageNumber = 50;  // width, mm

    const PlanSheet& m_sheet;
    QSizeF m_mm;
    PaperPages m_pages;
    Rows m_rows{QRectF()};
};

}  // namespace

PaperPages pagesOf(const PlanSheet& sheet, Paper paper)
{
    assert(isSheet(paper));
    Filler filler(sheet, paper);
    for (const PlanSheet::Line& line : sheet.lines)
        filler.add(line);
    return filler.pages();
}

}  // namespace bathside::ui
