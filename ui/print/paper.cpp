#include "ui/print/paper.h"

#include <QPainter>
#include <algorithm>

#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kMmPerInch = 25.4;
constexpr double kRuleMm = 0.3, kHairMm = 0.1;
constexpr double kHairline = 0.01;     // px
constexpr double kNoLigatures = 0.02;  // px: any spacing keeps the ff of a hash two letters

double px(double mm) { return theme().metrics().px(mm); }

/// The paper in pixels of the layout.
QRectF paperOf(const PaperPage& page)
{
    const QPointF offset(px(page.offsetMm.x()), px(page.offsetMm.y()));
    const QSizeF size(px(page.mm.width()), px(page.mm.height()));
    return QRectF(-offset / page.scale, size / page.scale)
        .adjusted(-kHairline, -kHairline, kHairline, kHairline);
}

}  // namespace

QSizeF sizeMm(Paper paper)
{
    switch (paper) {
        case Paper::Label:
            return {100, 50};
        case Paper::Roll:
            return {62, 0};
        case Paper::A4:
            return {210, 297};
        case Paper::Letter:
            return {215.9, 279.4};
    }
    Q_UNREACHABLE();
}

bool isSheet(Paper paper) { return paper == Paper::A4 || paper == Paper::Letter; }

bool allFit(const PaperPage& page)
{
    const QRectF paper = paperOf(page);
    return allFit(page.texts) && std::ranges::all_of(page.texts, [&](const PlacedText& text) {
               return paper.contains(text.room);
           });
}

SetPage setPage(const PaperPage& page)
{
    SetPage set{.mm = page.mm,
                .scale = page.scale,
                .offsetMm = page.offsetMm,
                .pxPerMm = px(1),
                .texts = {},
                .rules = page.rules,
                .hairs = page.hairs,
                .bars = page.bars,
                .barcodes = page.barcodes,
                .title = page.title};
    for (const PlacedText& text : page.texts) {
        FittedText letters = fitted(text.text, text.room.size(), text.wish);
        letters.font.setLetterSpacing(QFont::AbsoluteSpacing, kNoLigatures);
        set.texts.append({letters, text.room, text.alignment, text.ink});
    }
    return set;
}

void paint(QPainter& painter, const SetPage& page)
{
    const double pxPerMm = painter.device()->logicalDpiX() / kMmPerInch;
    const double scale = page.scale * pxPerMm / page.pxPerMm;
    painter.save();
    painter.translate(page.offsetMm * pxPerMm);
    painter.scale(scale, scale);
    for (const SetPage::Text& text : page.texts) {
        painter.setPen(text.ink);
        drawFitted(painter, text.room, text.alignment, text.set);
    }
    painter.setPen(QPen(Palette::paperInk(), kRuleMm * page.pxPerMm, Qt::SolidLine, Qt::FlatCap));
    painter.drawLines(page.rules);
    painter.setPen(QPen(Palette::paperInk(), kHairMm * page.pxPerMm, Qt::SolidLine, Qt::FlatCap));
    painter.drawLines(page.hairs);
    for (const QRectF& bar : page.bars)
        painter.fillRect(bar, Palette::paperInk());
    painter.setBrush(Palette::paperInk());
    for (const PlacedBarcode& placed : page.barcodes)
        paintBarcode(painter, placed.room, placed.barcode);
    painter.restore();
}

QPageSize pageSizeOf(const SetPage& page)
{
    return QPageSize(page.mm, QPageSize::Millimeter, {}, QPageSize::FuzzyMatch);
}

Rows::Rows(QSizeF mm, double insetMm)
    : m_left(px(insetMm), px(insetMm), px(mm.width() - 2 * insetMm), px(mm.height() - 2 * insetMm))
{
}

QRectF Rows::take(double mm)
{
    QRectF row = m_left;
    row.setHeight(px(mm));
    m_left.setTop(row.bottom());
    return row;
}

Rows Rows::takeRight(double mm)
{
    QRectF column = m_left;
    column.setLeft(column.right() - px(mm));
    m_left.setRight(column.left());
    return Rows(column);
}

double Rows::leftMm() const { return theme().metrics().mm(m_left.height()); }

double Rows::widthMm() const { return theme().metrics().mm(m_left.width()); }

}  // namespace bathside::ui
