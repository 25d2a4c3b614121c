#include "ui/print/bag_label_pages.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/text/numbers.h"
#include "ui/text/stores.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"
#include "ui/theme/palette.h"

namespace bathside::ui {
namespace {

struct LabelText {
    Q_DECLARE_TR_FUNCTIONS(BagLabel)
};

// All in mm.
constexpr double kInset = 3;  // label printers leave that much white
constexpr double kSheetInset = 15;
constexpr double kLeast = 1.5;  // capitals: read in the hand
constexpr double kSmall = 2.2, kMiddle = 2.8, kLarge = 7.5;
constexpr double kGap = 1.5;
constexpr double kCode = 26;        // side of the code with its quiet zone
constexpr double kCodeLeast = 1.1;  // they are for typing where no scanner reads
constexpr double kCodeText = 3.5;   // its signs beneath it
constexpr double kHead = 10, kBanner = 5, kFoot = 4.5;
constexpr double kUseBy = 28;  // width of the words before the time
constexpr double kComponent = 10;
constexpr double kName = 0.45;  // share of it: the rest are lot and counts

QString dosesText(std::int64_t doses)
{
    return LabelText::tr("%Ln doses", "on a bag's label", static_cast<int>(doses));
}

QString lotsText(const BagLabel::Component& component)
{
    QStringList lots;
    for (const LotId& lot : component.lots)
        lots.append(idText(lot));
    return LabelText::tr("lot %1", "on a bag's label").arg(lots.join(QStringLiteral(", ")));
}

QString joined(const QStringList& parts) { return parts.join(QStringLiteral(" · ")); }

QString countsText(const BagLabel::Component& component)
{
    QStringList parts{lotsText(component), ampoulesText(component.ampoules)};
    if (component.doses)
        parts.append(dosesText(*component.doses));
    return joined(parts);
}

QString contentText(const BagLabel& label)
{
    QStringList parts{volumeText(label.volume)};
    if (label.doses)
        parts.prepend(dosesText(*label.doses));
    return joined(parts);
}

QString mixedText(const BagLabel& label)
{
    return LabelText::tr("mixed %1 by %2", "when and by whom; on a bag's label")
        .arg(localMinuteText(label.mixed, label.zone), idText(label.preparer));
}

/// Puts texts on one page.
class Setter {
public:
    explicit Setter(PaperPage& page) : m_page(page) {}

    void text(const QRectF& room, const QString& text, double capMm, Weight weight,
              Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter)
    {
        m_page.texts.append({text, room, alignment, {capMm, kLeast, weight}, Palette::paperInk()});
    }
    void rule(const QRectF& row)
    {
        m_page.rules.append(QLineF(row.left(), row.center().y(), row.right(), row.center().y()));
    }

    void bagName(const QRectF& room, const BagLabel& label)
    {
        text(room, LabelText::tr("Bag %1", "heading of its label").arg(idText(label.bag)), kLarge,
             Weight::Strong);
    }
    void useBy(Rows rows, const BagLabel& label)
    {
        const Rows time = rows.takeRight(rows.widthMm() - kUseBy);
        static_cast<void>(rows.takeRight(kGap));
        text(rows.take(rows.leftMm() / 2),
             LabelText::tr("use by", "before a time, on a bag's label"), kMiddle, Weight::Strong);
        text(rows.left(), isoDayText(localDay(label.useBy, label.zone)), kMiddle, Weight::Regular);
        text(time.left(), localMinuteText(label.useBy, label.zone), kLarge, Weight::Strong);
    }
    void component(Rows rows, const BagLabel::Component& component)
    {
        text(rows.take(kName * rows.leftMm()), idText(component.id), kMiddle, Weight::Strong);
        text(rows.left(), countsText(component), kSmall, Weight::Regular);
    }
    void code(Rows& rows, const BagLabel& label)
    {
        const std::string code = codeOf(label);
        const QRectF room = rows.take(kCode);
        if (const auto barcode = barcodeOf(Symbology::DataMatrix, code))
            m_page.barcodes.append({*barcode, room});
        text(rows.take(kCodeText), fromCore(code), kSmall, Weight::Regular, Qt::AlignCenter);
        m_page.texts.last().wish.leastMm = kCodeLeast;
    }
    void banner(Rows& rows, const BagLabel& label)
    {
        if (label.rehearsal)
            text(rows.take(kBanner), LabelText::tr("REHEARSAL: not for birds", "on a bag's label"),
                 kMiddle, Weight::Strong, Qt::AlignCenter);
    }

private:
    PaperPage& m_page;
};

PaperPage lying(const BagLabel& label)
{
    PaperPage page{sizeMm(Paper::Label)};
    Setter set(page);
    Rows rows(page.mm, kInset);
    set.banner(rows, label);
    Rows right = rows.takeRight(kCode + kGap);
    set.bagName(rows.take(kHead), label);
    set.useBy(Rows(rows.take(kHead)), label);
    set.rule(rows.take(kGap));
    const auto count = static_cast<double>(std::max<std::size_t>(label.components.size(), 1));
    const double each = std::min(kComponent, rows.leftMm() / count);
    for (const BagLabel::Component& component : label.components)
        set.component(Rows(rows.take(each)), component);
    set.code(right, label);
    const QRectF content = right.take(right.leftMm() / 2);
    set.text(content, contentText(label), kMiddle, Weight::Strong, Qt::AlignCenter);
    set.text(right.left(), mixedText(label), kMiddle, Weight::Regular, Qt::AlignCenter);
    return page;
}

double standingHeight(const BagLabel& label)
{
    return 2 * kInset + (label.rehearsal ? kBanner : 0) + 2 * kHead + 2 * kGap +
           kComponent * static_cast<double>(label.components.size()) + 2 * kFoot + kCode +
           kCodeText;
}

PaperPage standing(const BagLabel& label)
{
    PaperPage page{{sizeMm(Paper::Roll).width(), standingHeight(label)}};
    Setter set(page);
    Rows rows(page.mm, kInset);
    set.banner(rows, label);
    set.bagName(rows.take(kHead), label);
    set.useBy(Rows(rows.take(kHead)), label);
    set.rule(rows.take(kGap));
    for (const BagLabel::Component& component : label.components)
        set.component(Rows(rows.take(kComponent)), component);
    set.text(rows.take(kFoot), contentText(label), kMiddle, Weight::Strong);
    set.text(rows.take(kFoot), mixedText(label), kMiddle, Weight::Regular);
    rows.skip(kGap);
    set.code(rows, label);
    return page;
}

/// The same, as large as the sheet allows, in the middle of its upper part.
PaperPage onSheet(PaperPage page, QSizeF sheet)
{
    const QSizeF room = sheet - QSizeF(2 * kSheetInset, 2 * kSheetInset);
    page.scale = std::min(room.width() / page.mm.width(), room.height() / page.mm.height());
    page.offsetMm = {(sheet.width() - page.scale * page.mm.width()) / 2, kSheetInset};
    page.mm = sheet;
    return page;
}

}  // namespace

PaperPages pagesOf(const BagLabel& label, Paper paper)
{
    switch (paper) {
        case Paper::Label:
            return {lying(label)};
        case Paper::Roll:
            return {standing(label)};
        case Paper::A4:
        case Paper::Letter:
            return {onSheet(standing(label), sizeMm(paper))};
    }
    Q_UNREACHABLE();
}

}  // namespace bathside::ui
